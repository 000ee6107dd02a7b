import { peukertLine } from './peukert-exponent.ts';
import { type RunCharge, rateCount, requireRuns } from './runs-near-current.ts';

/** Our choice: two rates give a line whatever they are; only a third can lie off it. */
const LEAST_RATES = 3;

/**
 * Standard uncertainty of Peukert's exponent (peukert-exponent.ts), from how the runs lie about their line.
 *
 * Shape   n complete runs in; null under three different rates (runs-near-current.ts).
 * Units   A, Ah in; a pure number out.
 * Error   what is alike in all runs, such as a meter that reads 1 % high, does not show. With n − 2 degrees of freedom
 *         it is itself uncertain: of three runs, k = 2 covers 70 % rather than 95 % (Student's t).
 * Throws  RangeError if a figure is not positive.
 * Source  standard deviation of a slope (least-squares-line.ts); JCGM 100:2008 (GUM) 4.2, H.3, clause numbers not checked
 * Check   tests/calc/peukert-uncertainty.test.ts
 */
export function peukertUncertainty(runs: readonly RunCharge[]): number | null {
  requireRuns('peukertUncertainty', runs);
  if (rateCount(runs.map((run) => run.currentA)) < LEAST_RATES) return null;
  return peukertLine(runs)?.scatter?.slopeDeviation ?? null;
}
