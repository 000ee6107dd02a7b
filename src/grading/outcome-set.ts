import { GRADES, type Grade, OUTCOMES, type Outcome } from '../schema/grade.ts';

/**
 * A set of outcomes as bits in the order of OUTCOMES: 1 sound, 2 passable, 4 weak, 8 failed, 16 does not apply.
 * Numbers, because looking for the next question weighs several hundred sets per grading.
 */
export type OutcomeSet = number;

/** The empty set: the item is not asked on this route. */
export const NOT_ASKED: OutcomeSet = 0;
export const DOES_NOT_APPLY: OutcomeSet = 16;
const ANY_GRADE: OutcomeSet = 15;

export function setOf(outcome: Outcome): OutcomeSet {
  return 1 << OUTCOMES.indexOf(outcome);
}

export function outcomesIn(set: OutcomeSet): Outcome[] {
  return OUTCOMES.filter((_, position) => (set & (1 << position)) !== 0);
}

/** Exactly one outcome is left. */
export function isSettled(set: OutcomeSet): boolean {
  return set !== 0 && (set & (set - 1)) === 0;
}

/** At least one grade is left: the item is asked and does not surely fall away. */
export function mayApply(set: OutcomeSet): boolean {
  return (set & ANY_GRADE) !== 0;
}

export function mayNotApply(set: OutcomeSet): boolean {
  return (set & DOES_NOT_APPLY) !== 0;
}

/** Rank (0 sound … 3 failed) of the worst grade in a set that may apply. */
export function worstRank(set: OutcomeSet): number {
  return 31 - Math.clz32(set & ANY_GRADE);
}

/** Rank (0 sound … 3 failed) of the best grade in a set that may apply. */
export function bestRank(set: OutcomeSet): number {
  return 31 - Math.clz32(set & -set & ANY_GRADE);
}

export function gradeAt(rank: number): Grade {
  const grade = GRADES[rank];
  if (grade === undefined) throw new RangeError(`gradeAt: rank must be 0 to 3, got ${rank}`);
  return grade;
}
