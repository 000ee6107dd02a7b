import type { Checklist, Item } from '../schema/checklist.ts';
import { GRADES } from '../schema/grade.ts';
import type { ItemResult } from './grading.ts';

/** Why an item counts otherwise under another definition. */
export type ItemReason =
  /** Not asked before, and now open, or settled by what was noted already. */
  | 'addedOpen'
  | 'addedSettled'
  | 'removed'
  /** The same answer or readings come to another outcome, because … */
  | 'nowMeasured'
  | 'otherBands'
  | 'otherCondition'
  | 'otherOutcome'
  /** Its sentences are other ones: what was chosen was chosen among the earlier. */
  | 'otherMeaning'
  | 'otherWeight'
  | 'otherZone'
  | 'otherZoneWeight'
  | 'otherCredit';

interface ItemUnder {
  item: Item;
  result: ItemResult;
  definition: Checklist;
}

/** All reasons that hold, in one order; none where only the items beside it changed. Undefined: not asked. */
export function itemReasons(was: ItemUnder | undefined, now: ItemUnder | undefined): ItemReason[] {
  if (now === undefined) return was === undefined ? [] : ['removed'];
  if (was === undefined) return [now.result.settled ? 'addedSettled' : 'addedOpen'];
  return [...outcomeReasons(was, now), ...meaningReasons(was, now), ...weightReasons(was, now)];
}

function outcomeReasons(was: ItemUnder, now: ItemUnder): ItemReason[] {
  if (isSame([was.result.grade, was.result.possible], [now.result.grade, now.result.possible])) return [];
  const wasMeasured = was.result.measured !== null;
  const isMeasured = now.result.measured !== null;
  const [one, other] = [was.item, now.item];
  const reasons: ItemReason[] = [
    ...(isMeasured && !wasMeasured ? (['nowMeasured'] as const) : []),
    ...(isMeasured && wasMeasured && !isSame([one.measure, one.derive], [other.measure, other.derive])
      ? (['otherBands'] as const)
      : []),
    ...(isSame([one.onlyIf, one.mayNotApply], [other.onlyIf, other.mayNotApply]) ? [] : (['otherCondition'] as const)),
  ];
  return reasons.length > 0 || meaningReasons(was, now).length > 0 ? reasons : ['otherOutcome'];
}

function meaningReasons(was: ItemUnder, now: ItemUnder): ItemReason[] {
  return GRADES.some((grade) => was.item.grades[grade] !== now.item.grades[grade]) ? ['otherMeaning'] : [];
}

function weightReasons(was: ItemUnder, now: ItemUnder): ItemReason[] {
  if (was.item.zone !== now.item.zone) return ['otherZone'];
  return [
    ...(was.item.weight === now.item.weight ? [] : (['otherWeight'] as const)),
    ...(isSameShare(zoneShare(was), zoneShare(now)) ? [] : (['otherZoneWeight'] as const)),
    ...(creditLost(was) === creditLost(now) || !isSame(was.result.possible, now.result.possible)
      ? []
      : (['otherCredit'] as const)),
  ];
}

/** Share of its zone among all zones of the definition: only that counts, not the weight as written. */
function zoneShare({ item, definition }: ItemUnder): number {
  const all = definition.zones.reduce((sum, { weight }) => sum + weight, 0);
  return (definition.zones.find(({ id }) => id === item.zone)?.weight ?? 0) / all;
}

function isSameShare(one: number, other: number): boolean {
  return Math.abs(one - other) < 1e-12;
}

/** Credit at its worst remaining grade, which is what the low end counts. */
function creditLost({ result, definition }: ItemUnder): number {
  const worst = GRADES.findLast((grade) => result.possible.includes(grade));
  return worst === undefined ? 0 : definition.credits[worst];
}

function isSame(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
