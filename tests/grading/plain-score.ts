import type { Checklist, Item } from '../../src/schema/checklist.ts';
import type { Grade } from '../../src/schema/grade.ts';
import type { GradedRecord } from './arbitrary-record.ts';

/** MIL-STD-882E Table III as a string a row, severity 1 to 4: H high, S serious, M medium, L low. */
const TABLE_III: Readonly<Record<string, string>> = { A: 'HHSM', B: 'HHSM', C: 'HSML', D: 'SMML', E: 'MMML' };

/**
 * Build and factor of a record in which everything asked is settled, written straight from DESIGN §5 without sets,
 * ranges or arrays by place: the engine's numbers are held against these.
 */
export function plainScore(definition: Checklist, record: GradedRecord): { build: number; factor: number } {
  const applying = definition.items.flatMap((item) => {
    const grade = gradeOf(item, record);
    return grade === null ? [] : [{ item, grade }];
  });
  const zones = definition.zones.flatMap(({ id, weight }) => {
    const inZone = applying.filter(({ item }) => item.zone === id);
    if (inZone.length === 0) return [];
    const earned = inZone.reduce((sum, { item, grade }) => sum + item.weight * definition.credits[grade], 0);
    return [{ weight, q: earned / inZone.reduce((sum, { item }) => sum + item.weight, 0) }];
  });
  const weightSum = zones.reduce((sum, { weight }) => sum + weight, 0);
  const build = (100 * zones.reduce((sum, { weight, q }) => sum + weight * q, 0)) / weightSum;
  const factors = definition.hazards.map(({ id }) =>
    Math.min(1, ...applying.filter(({ item }) => item.hazard === id).map((found) => kOf(definition, found))),
  );
  return { build, factor: factors.reduce((product, k) => product * k, 1) };
}

function gradeOf(item: Item, { answers, facts, route }: GradedRecord): Grade | null {
  if (route === 'short' && item.route === 'whole') return null;
  if (item.onlyIf !== undefined && facts[item.onlyIf.fact] !== item.onlyIf.is) return null;
  const answer = answers[item.id];
  if (answer?.kind !== 'grade') return null;
  return item.safety && answer.evidence === 'told' && answer.grade === 'sound' ? 'passable' : answer.grade;
}

/** k falls as risk grows, so the least k is the worst risk's. */
function kOf({ k }: Checklist, { item, grade }: { item: Item; grade: Grade }): number {
  if (grade === 'sound' || grade === 'passable') return 1;
  const rule = grade === 'weak' ? 'D' : item.safety ? 'B' : 'C';
  const level = TABLE_III[item.likelihood?.[grade] ?? rule]?.[(item.severity ?? Number.NaN) - 1];
  if (level === 'H') return k.high;
  if (level === 'S') return k.serious;
  return level === 'M' ? k.medium : k.low;
}
