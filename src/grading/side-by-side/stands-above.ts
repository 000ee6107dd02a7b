import { VERDICTS, type VerdictName } from '../../schema/verdict.ts';
import type { Range } from '../grading.ts';

/** What an order between two packs rests on. */
export interface Placed {
  verdict: { low: VerdictName; high: VerdictName; settled: boolean };
  score: Range;
}

/**
 * Whether x stands above y: its verdict is better at its worst than the other's at its best, or both verdicts are
 * settled and equal and its score is. Neither above the other is a tie.
 *
 * Source  DESIGN §5, "Side by side"
 * Check   tests/grading/side-by-side/stands-above.test.ts
 */
export function standsAbove(x: Placed, y: Placed): boolean {
  if (verdictRank(x.verdict.low) > verdictRank(y.verdict.high)) return true;
  return scoresDecide(x, y) && x.score.low > y.score.high;
}

/** Between these two the scores decide. */
export function scoresDecide(
  { verdict: x }: Pick<Placed, 'verdict'>,
  { verdict: y }: Pick<Placed, 'verdict'>,
): boolean {
  return x.settled && y.settled && x.low === y.low;
}

/** 0 is the worst. */
export function verdictRank(verdict: VerdictName): number {
  return VERDICTS.indexOf(verdict);
}
