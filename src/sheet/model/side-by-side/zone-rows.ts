import type { Range } from '../../../grading/grading.ts';
import { GRADES, type Grade } from '../../../schema/grade.ts';
import { formatFixed, formatSpan } from '../../../text/format-number.ts';
import { GRADE_WORDS } from '../../../text/grades.ts';
import { sideBySideWords as say } from '../../../text/side-by-side.ts';
import type { GridRow } from '../sheet.ts';
import { cell, type GridCell, gridRow } from './grid-rows.ts';
import type { PackColumn } from './pack-columns.ts';

export interface ComparedZone {
  /** Unique over all checklists. */
  key: string;
  title: string;
  /** By column; undefined where its checklist has no such zone. */
  found: (FoundZone | undefined)[];
}
interface FoundZone {
  /** Null where nothing of it can apply. */
  q: Range | null;
  settled: boolean;
  /** Null where nothing of it was graded. */
  worst: Grade | null;
}

/** Every zone of every checklist, once. */
export function comparedZones(columns: readonly PackColumn[]): ComparedZone[] {
  const zones = new Map<string, ComparedZone>();
  columns.forEach((column, at) => {
    column.weighing.zones.forEach(({ id, title }, place) => {
      const key = `${column.definition.id}/${id}`;
      const zone = zones.get(key) ?? { key, title, found: columns.map(() => undefined) };
      zone.found[at] = foundZone(column, id, place);
      zones.set(key, zone);
    });
  });
  return [...zones.values()];
}

export function zoneRows(columns: readonly PackColumn[]): GridRow[] {
  return comparedZones(columns).map(({ key, title, found }) =>
    gridRow({ id: `zone:${key}`, group: say.groups.zones, label: title, cells: found.map(zoneCell) }),
  );
}

/** "80" or "62–88", or that nothing of it applies. */
export function zoneText(zone: FoundZone | undefined): string {
  if (zone === undefined) return say.none;
  if (zone.q === null) return say.notApplying;
  const shown = { low: zone.q.low * 100, high: zone.q.high * 100 };
  return zone.settled ? formatFixed(shown.low, 0) : formatSpan(shown, 0);
}

function zoneCell(zone: FoundZone | undefined): GridCell {
  const text = zoneText(zone);
  if (zone === undefined) return cell(text);
  if (zone.q === null) return { text, note: null, glyph: 'doesNotApply' };
  if (zone.worst === null) return { text, note: say.nothingGraded, glyph: 'notSeen' };
  return { text, note: say.worst(GRADE_WORDS[zone.worst]), glyph: zone.worst };
}

/** It can apply, and nothing of it was graded: its range says nothing of the pack. */
export function isOpen(zone: FoundZone | undefined): boolean {
  return zone !== undefined && zone.q !== null && zone.worst === null;
}

/** On the common items where it is ranked; of a pack that is not, on all that it was asked. */
function foundZone({ packId, group, grading }: PackColumn, zoneId: string, place: number): FoundZone {
  const ranked = group.firmness?.packs.find((pack) => pack.packId === packId);
  const common = new Set(group.commonItemIds);
  const asked = grading.items.filter((item) => item.zoneId === zoneId && item.asked);
  const items = ranked === undefined ? asked : asked.filter(({ itemId }) => common.has(itemId));
  const grades = items.flatMap(({ grade }) => grade ?? []);
  return {
    q:
      ranked === undefined
        ? (grading.zones.find((zone) => zone.zoneId === zoneId)?.q ?? null)
        : (ranked.zones[place] ?? null),
    settled: items.every(({ settled }) => settled),
    worst: GRADES.toReversed().find((grade) => grades.includes(grade)) ?? null,
  };
}
