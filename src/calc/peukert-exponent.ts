import { type Line, leastSquaresLine } from './least-squares-line.ts';
import { type RunCharge, rateCount, requireRuns } from './runs-near-current.ts';

/**
 * Peukert's exponent k of complete runs (complete-run.ts): Iᵏ·t is constant, t = charge ÷ mean current.
 * 1 means that the rate costs no charge; a pack that warms up at the hard rate can come out below 1.
 *
 * Shape   n complete runs in; null if all are at one rate (runs-near-current.ts), where the meter's error would
 *         decide. Least squares of log t on log I; every run counts alike.
 * Units   A, Ah in; a pure number out.
 * Throws  RangeError if a figure is not positive.
 * Error   peukert-uncertainty.ts
 * Source  Peukert's law as in public worked examples: k = (log t₂ − log t₁) ÷ (log I₁ − log I₂)
 * Check   tests/calc/peukert-exponent.test.ts
 */
export function peukertExponent(runs: readonly RunCharge[]): number | null {
  requireRuns('peukertExponent', runs);
  const line = peukertLine(runs);
  return line === null ? null : -line.slope;
}

/** log t over log I, whose slope is −k; null if all runs are at one rate. */
export function peukertLine(runs: readonly RunCharge[]): Line | null {
  if (rateCount(runs.map((run) => run.currentA)) < 2) return null;
  return leastSquaresLine(
    runs.map(({ currentA }) => Math.log(currentA)),
    runs.map(({ currentA, chargeAh }) => Math.log(chargeAh / currentA)),
  );
}
