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

/** How many rates these currents are: one counts as another than the gentler one before it if it is over 10 % harder. */
export function rateCount(currentsA: readonly number[]): number {
  let count = 0;
  let mostA = Number.NEGATIVE_INFINITY;
  for (const currentA of currentsA.toSorted((a, b) => a - b)) {
    if (currentA <= mostA) continue;
    count += 1;
    mostA = currentA * (1 + SAME_RATE_FRAC) * (1 + BINARY_SLACK_FRAC);
  }
  return count;
}
