import type { Checklist, Item } from '../schema/checklist.ts';
import { GRADES, type Grade, gradeRank } from '../schema/grade.ts';
import type { Grading, ItemResult } from './grading.ts';
import { isFinding } from './item-risk.ts';

/** A record as it is graded. */
export interface GradedBy {
  definition: Checklist;
  grading: Grading;
}

export interface ItemChange {
  itemId: string;
  title: string;
  was: ItemResult;
  now: ItemResult;
  /** The two checklists describe its grades in different words. */
  reworded: boolean;
}

/** Every item that both records ask is in exactly one of the lists and counts. */
export interface ItemChanges {
  comparedCount: number;
  /** A finding now. Then it was none, or it was not settled: `was` says which. */
  appeared: ItemChange[];
  /** A finding both times, or none both times, at a worse or a better grade. */
  worse: ItemChange[];
  better: ItemChange[];
  /** A finding then, surely none now. */
  gone: ItemChange[];
  /** A finding then, open now: it may still be there. */
  notLookedAgain: ItemChange[];
  /** A finding both times, and readings are missing to say which grade is the worse. */
  foundBoth: ItemChange[];
  sameCount: number;
  /** No finding in either; it applies to one of the packs only. */
  appliesToOneCount: number;
  /** Not settled in one or the other, and a finding in neither. */
  openCount: number;
  /** Asked of one pack only: another route or another version. */
  onlyThenCount: number;
  onlyNowCount: number;
}

type Place =
  | 'appeared'
  | 'worse'
  | 'better'
  | 'gone'
  | 'notLookedAgain'
  | 'foundBoth'
  | 'same'
  | 'appliesToOne'
  | 'open';

/**
 * What became of each item from one record to another, over those that both ask, in the order of the later definition.
 * An item whose outcome is open is never taken for sound: it neither goes away nor gets better.
 *
 * Check   tests/grading/item-changes.test.ts
 */
export function itemChanges(was: GradedBy, now: GradedBy): ItemChanges {
  const earlier = new Map(askedOf(was).map((asked) => [asked.item.id, asked]));
  const later = askedOf(now);
  const both = later.flatMap(({ item, result }) => {
    const before = earlier.get(item.id);
    if (before === undefined) return [];
    const reworded = GRADES.some((grade) => before.item.grades[grade] !== item.grades[grade]);
    const change: ItemChange = { itemId: item.id, title: item.title, was: before.result, now: result, reworded };
    return [{ change, place: placeOf(before.result, result) }];
  });
  const at = (wanted: Place) => both.filter(({ place }) => place === wanted).map(({ change }) => change);
  return {
    comparedCount: both.length,
    appeared: at('appeared'),
    worse: at('worse'),
    better: at('better'),
    gone: at('gone'),
    notLookedAgain: at('notLookedAgain'),
    foundBoth: at('foundBoth'),
    sameCount: at('same').length,
    appliesToOneCount: at('appliesToOne').length,
    openCount: at('open').length,
    onlyThenCount: earlier.size - both.length,
    onlyNowCount: later.length - both.length,
  };
}

/**
 * Whether an item is a finding, surely none, or may still be one. A grade given under an open fact counts as given; what
 * nobody looked at is no finding, though its sentences be faults alone.
 */
export function findingOf({ grade, possible, because }: ItemResult): 'finding' | 'none' | 'open' {
  const outcomes = grade === null ? possible : [grade];
  const findings = outcomes.filter((outcome) => outcome !== 'doesNotApply' && isFinding(outcome));
  if (findings.length === 0) return 'none';
  const isSeen = grade !== null || because === 'measured';
  return isSeen && findings.length === outcomes.length ? 'finding' : 'open';
}

/** The items a record asks with what came of them, in definition order. */
export function askedOf({ definition, grading }: GradedBy): { item: Item; result: ItemResult }[] {
  const byId = new Map(grading.items.map((result) => [result.itemId, result]));
  return definition.items.flatMap((item) => {
    const result = byId.get(item.id);
    return result?.asked ? [{ item, result }] : [];
  });
}

function placeOf(was: ItemResult, now: ItemResult): Place {
  const [before, after] = [findingOf(was), findingOf(now)];
  if (after === 'finding' && before !== 'finding') return 'appeared';
  if (before === 'finding' && after !== 'finding') return after === 'none' ? 'gone' : 'notLookedAgain';
  if (before === 'open' || after === 'open') return 'open';
  const [one, other] = [ranksOf(was), ranksOf(now)];
  if (one === null || other === null) return one === other ? 'same' : 'appliesToOne';
  if (other.best > one.worst) return 'worse';
  if (other.worst < one.best) return 'better';
  if (isOne(one) && isOne(other)) return 'same';
  return after === 'finding' ? 'foundBoth' : 'open';
}

/** Best and worst grade still possible; null of an item that does not apply. */
function ranksOf({ grade, possible }: ItemResult): { best: number; worst: number } | null {
  const grades: Grade[] = grade === null ? possible.filter((outcome) => outcome !== 'doesNotApply') : [grade];
  const ranks = grades.map(gradeRank);
  return ranks.length === 0 ? null : { best: Math.min(...ranks), worst: Math.max(...ranks) };
}

function isOne({ best, worst }: { best: number; worst: number }): boolean {
  return best === worst;
}
