import type { Firmness, RankGroup } from '../../../grading/side-by-side/side-by-side.ts';
import { formatFixed } from '../../../text/format-number.ts';
import { listOf, ROUTE_WORDS } from '../../../text/sheet.ts';
import { sideBySideWords } from '../../../text/side-by-side.ts';
import type { Block } from '../sheet.ts';
import type { PackColumn } from './pack-columns.ts';

const say = sideBySideWords.firmness;

/** How often each order held under other weights, in plain words. */
export function firmnessBlocks(
  columns: readonly PackColumn[],
  groups: readonly RankGroup[],
  firmness: readonly (Firmness | null)[],
): Block[] {
  const weighed = groups.flatMap((group, place) =>
    group.firmness === null ? [] : [{ group, firmness: firmness[place] ?? null }],
  );
  if (weighed.length === 0) return [{ kind: 'paragraph', text: say.none, tone: 'plain' }];
  const drawn = weighed.flatMap((one) => (one.firmness === null ? [] : [{ ...one, firmness: one.firmness }]));
  const [first] = drawn;
  if (first === undefined) return [{ kind: 'paragraph', text: say.notDrawn, tone: 'plain' }];
  return [
    {
      kind: 'paragraph',
      text: say.intro(formatFixed(first.firmness.draws, 0), first.firmness.seed),
      tone: 'plain',
    },
    ...drawn.flatMap((one): Block[] => {
      const names = one.firmness.packIds.map((id) => columns.find(({ packId }) => packId === id)?.name ?? id);
      const without = columns.filter(({ packId }) => !one.firmness.packIds.includes(packId));
      const items = firmLines(one.group, one.firmness, names).map((text) => ({ text }));
      if (without.length > 0)
        items.push({ text: say.without(without.map((column) => leftOutText(column, one.group))) });
      return [
        ...(weighed.length === 1 ? [] : [{ kind: 'subhead', text: say.among(names) } satisfies Block]),
        { kind: 'list', items },
      ];
    }),
    { kind: 'paragraph', text: say.verdicts, tone: 'muted' },
  ];
}

function leftOutText({ name, group, member }: PackColumn, order: RankGroup): string {
  if (member.notRanked !== null) return say.withoutRow(name, sideBySideWords.notRanked[member.notRanked]);
  const isOneChecklist = group.checklistId === order.checklistId && group.major === order.major;
  return say.withoutRow(name, isOneChecklist ? say.elsewhere(ROUTE_WORDS[group.route]) : say.otherChecklist);
}

function firmLines(group: RankGroup, firmness: Firmness, names: readonly string[]): string[] {
  const { draws, leads, noneLeads, orderHolds, packIds, above } = firmness;
  const order = names.map((_, place) => place).toSorted((a, b) => (leads[b] ?? 0) - (leads[a] ?? 0));
  const never = order.filter((place) => leads[place] === 0).map((place) => names[place] ?? '');
  const leading = order.filter((place) => leads[place] !== 0);
  const pairs = group.members.flatMap((lower, place) => {
    const upper = group.members[place - 1];
    if (upper === undefined || !lower.belowPackIds.includes(upper.packId)) return [];
    const [x, y] = [packIds.indexOf(upper.packId), packIds.indexOf(lower.packId)];
    return [say.above(names[x] ?? '', names[y] ?? '', times(above[x]?.[y] ?? 0, draws))];
  });
  return [
    ...leading.map((place) => say.leads(names[place] ?? '', times(leads[place] ?? 0, draws))),
    ...(never.length === 0 || noneLeads === draws ? [] : [say.lead(listOf(never), never.length, times(0, draws))]),
    ...(noneLeads === 0 ? [] : [noneLeads === draws ? say.noneEver : say.noneLeads(times(noneLeads, draws))]),
    say.holds(times(orderHolds, draws)),
    // With two packs the first line says it.
    ...(packIds.length > 2 ? pairs : []),
  ];
}

/** Whole hundredths: never none unless none, never all unless all. */
function times(count: number, draws: number): string {
  if (count === draws) return say.all;
  if (count === 0) return say.never;
  return say.of100(Math.min(99, Math.max(1, Math.round((100 * count) / draws))));
}
