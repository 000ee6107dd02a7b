import { type WeightedKappa, weightedKappa } from '../calc/weighted-kappa.ts';
import type { RecordSecondReader } from '../record/pack-record.ts';
import { GRADES, type Grade, gradeRank } from '../schema/grade.ts';
import type { SecondAnswer } from '../schema/second-reading.ts';
import type { Grading, ItemResult } from './grading.ts';

/** Why an item the second reader was shown is in no pair. The first that holds counts. */
export const LEFT_OUT = [
  'firstNotSeen',
  'firstDoesNotApply',
  'firstOpen',
  'secondCannotTell',
  'secondDoesNotApply',
  'secondNotAnswered',
] as const;
export type LeftOut = (typeof LEFT_OUT)[number];

export interface Difference {
  itemId: string;
  first: Grade;
  second: Grade;
  /** Grades apart, 1 to 3. */
  steps: number;
}

export interface Agreement {
  /** Null where it cannot be told: fewer than two pairs, or all of one and the same grade. */
  kappa: WeightedKappa | null;
  /** Items to which both gave one of the four grades. */
  pairCount: number;
  sameCount: number;
  /** Pairs two grades apart or more. */
  farApartCount: number;
  /** Pairs by the first reader's grade, then the second's. */
  counts: Record<Grade, Record<Grade, number>>;
  /** Furthest apart first, then in the checklist's order. */
  differences: Difference[];
  leftOut: Record<LeftOut, number>;
  /** Answers of the second reader, of whatever kind. */
  answeredCount: number;
  /** Pairs in which the first reader's grade is another now than when the reading was finished; not counted with. */
  changedSinceCount: number;
}

/** The grades that count and of which nothing is open, by item id: what a finished reading is held against for good. */
export function settledGrades(grading: Grading): Record<string, Grade> {
  const found = grading.items
    .filter(({ asked }) => asked)
    .map((result) => [result.itemId, gradeOrWhy(result)] as const);
  return Object.fromEntries(found.filter((pair): pair is readonly [string, Grade] => isGrade(pair[1])));
}

/**
 * How far a second reader agrees with the grades that count in the record; once finished, with those that counted then.
 *
 * Shape   the grading, the second reader and the ids of the items that can be told from photos in; pairs counted, and
 *         every item shown or answered that makes no pair counted by why. An item not asked counts nowhere.
 * Check   tests/grading/agreement.test.ts
 */
export function agreementOf(
  grading: Grading,
  { answers, firstGrades }: Pick<RecordSecondReader, 'answers' | 'firstGrades'>,
  shownItemIds: readonly string[],
): Agreement {
  const shown = new Set(shownItemIds);
  const counts = emptyCounts();
  const leftOut = Object.fromEntries(LEFT_OUT.map((why) => [why, 0])) as Record<LeftOut, number>;
  const differences: Difference[] = [];
  let answeredCount = 0;
  let changedSinceCount = 0;
  for (const result of grading.items) {
    const answer = answers[result.itemId];
    if (!result.asked || (answer === undefined && !shown.has(result.itemId))) continue;
    if (answer !== undefined) answeredCount += 1;
    const now = gradeOrWhy(result);
    const first = firstGrades === undefined ? now : gradeThen(firstGrades, result.itemId, now);
    const second = secondGradeOrWhy(answer);
    if (!isGrade(first)) leftOut[first] += 1;
    else if (!isGrade(second)) leftOut[second] += 1;
    else {
      counts[first][second] += 1;
      if (first !== now) changedSinceCount += 1;
      const steps = Math.abs(gradeRank(first) - gradeRank(second));
      if (steps > 0) differences.push({ itemId: result.itemId, first, second, steps });
    }
  }
  const table = GRADES.map((first) => GRADES.map((second) => counts[first][second]));
  const pairCount = table.flat().reduce((sum, count) => sum + count, 0);
  return {
    kappa: weightedKappa(table),
    pairCount,
    sameCount: pairCount - differences.length,
    farApartCount: differences.filter(({ steps }) => steps >= 2).length,
    counts,
    differences: differences.sort((a, b) => b.steps - a.steps),
    leftOut,
    answeredCount,
    changedSinceCount,
  };
}

/** What was not graded then makes no pair, whatever it is graded now. */
function gradeThen(
  firstGrades: Readonly<Record<string, Grade>>,
  itemId: string,
  now: Grade | LeftOut,
): Grade | LeftOut {
  const then = Object.hasOwn(firstGrades, itemId) ? firstGrades[itemId] : undefined;
  return then ?? (isGrade(now) ? 'firstOpen' : now);
}

/** The grade that counts, once nothing about it is open. */
function gradeOrWhy({ possible, because }: ItemResult): Grade | LeftOut {
  const [only, ...more] = possible;
  if (only !== undefined && more.length === 0) return only === 'doesNotApply' ? 'firstDoesNotApply' : only;
  return because === 'notSeen' ? 'firstNotSeen' : 'firstOpen';
}

function secondGradeOrWhy(answer: SecondAnswer | undefined): Grade | LeftOut {
  if (answer === undefined) return 'secondNotAnswered';
  if (answer.kind === 'grade') return answer.grade;
  return answer.kind === 'cannotTell' ? 'secondCannotTell' : 'secondDoesNotApply';
}

function isGrade(found: Grade | LeftOut): found is Grade {
  return (GRADES as readonly string[]).includes(found);
}

function emptyCounts(): Record<Grade, Record<Grade, number>> {
  const row = () => Object.fromEntries(GRADES.map((grade) => [grade, 0])) as Record<Grade, number>;
  return Object.fromEntries(GRADES.map((grade) => [grade, row()])) as Record<Grade, Record<Grade, number>>;
}
