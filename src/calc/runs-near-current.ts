import { requirePositive } from './rated-energy.ts';

/** Our choice: electronic loads hold their current to a few per cent; runs this close count as one rate. */
export const SAME_RATE_FRAC = 0.1;
/** 22 is not within 10 % of 20 in binary; far below what any meter shows. */
const BINARY_SLACK_FRAC = 1e-9;

/** Mean current and charge of one run, as magnitudes. */
export interface RunCharge {
  currentA: number;
  chargeAh: number;
}

/**
 * The runs at the same rate as a given current: within ±10 % of it, both ends included.
 *
 * Shape   n runs in, 0 to n of them out, in their order.
 * Units   A in.
 * Throws  RangeError if a current is not positive.
 * Source  ±10 %: our choice, see SAME_RATE_FRAC
 * Check   tests/calc/runs-near-current.test.ts
 */
export function runsNearCurrent<R extends { currentA: number }>(runs: readonly R[], currentA: number): R[] {
  requirePositive('runsNearCurrent: currentA', currentA);
  const mostOffA = SAME_RATE_FRAC * currentA * (1 + BINARY_SLACK_FRAC);
  return runs.filter((run) => {
    requirePositive('runsNearCurrent: currentA of a run', run.currentA);
    return Math.abs(run.currentA - currentA) <= mostOffA;
  });
}

/** Throws RangeError, naming the function that was called, unless every figure is positive. */
export function requireRuns(caller: string, runs: readonly RunCharge[]): void {
  for (const { currentA, chargeAh } of runs) {
    requirePositive(`${caller}: currentA`, currentA);
    requirePositive(`${caller}: chargeAh`, chargeAh);
  }
}

/** Whether the gentlest and the hardest of these currents are two rates, not one held twice. */
export function haveTwoRates(currentsA: readonly number[]): boolean {
  const gentlestA = Math.min(...currentsA);
  return currentsA.some((currentA) => currentA > gentlestA * (1 + SAME_RATE_FRAC) * (1 + BINARY_SLACK_FRAC));
}
