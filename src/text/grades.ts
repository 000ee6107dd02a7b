import type { Evidence, Grade, Outcome } from '../schema/grade.ts';

export const GRADE_WORDS: Readonly<Record<Grade, string>> = {
  sound: 'sound',
  passable: 'passable',
  weak: 'weak',
  failed: 'failed',
};

export const OUTCOME_WORDS: Readonly<Record<Outcome, string>> = { ...GRADE_WORDS, doesNotApply: 'does not apply' };

/** How a person knows. "Told" is somebody's claim, not looked at here. */
export const EVIDENCE_WORDS: Readonly<Record<Evidence, string>> = { seen: 'seen', measured: 'measured', told: 'told' };

export const NOT_SEEN_WORD = 'not seen';

/** Why the outcome of an item is what it is. Keys as in the engine's result. */
export const BECAUSE_WORDS = {
  answered: 'answered',
  measured: 'measured in part',
  notSeen: 'not seen',
  doesNotApply: 'does not apply',
  factExcludes: 'does not apply to this pack',
  factOpen: 'open until a fact about the pack is known',
  unanswered: 'not answered',
  notAsked: 'not asked on this route',
  error: 'could not be worked out',
} as const;
export type Because = keyof typeof BECAUSE_WORDS;

/** Said where a maker's claim alone stood behind a sound answer to a safety item. */
export const LOWERED_BY_TOLD = 'sound as told; a claim alone settles a safety item at passable at best';
