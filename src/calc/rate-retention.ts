import { meanOf } from './mean-of.ts';
import { requirePositive } from './rated-energy.ts';
import { type RunCharge, rateCount, requireRuns, runsNearCurrent } from './runs-near-current.ts';

/**
 * Share of the gentle charge that is left at the hard rate; both from complete runs (complete-run.ts).
 *
 * Units   Ah in; a share out, above 1 if the hard run gave more (a warm pack may).
 * Throws  RangeError if a charge is not positive.
 * Source  definition
 * Check   tests/calc/rate-retention.test.ts
 */
export function rateRetentionFrac({ gentleAh, hardAh }: { gentleAh: number; hardAh: number }): number {
  requirePositive('rateRetentionFrac: gentleAh', gentleAh);
  requirePositive('rateRetentionFrac: hardAh', hardAh);
  return hardAh / gentleAh;
}

export interface RateRetention {
  gentleA: number;
  hardA: number;
  retentionFrac: number;
}

/**
 * The same from a list of complete runs: the mean of those at the gentlest rate against the mean of those at the
 * hardest. Null if all are at one rate (runs-near-current.ts).
 *
 * Units   A, Ah in; A and a share out.
 * Throws  RangeError if a figure is not positive.
 * Check   tests/calc/rate-retention.test.ts
 */
export function rateRetentionOfRuns(runs: readonly RunCharge[]): RateRetention | null {
  requireRuns('rateRetentionOfRuns', runs);
  const currentsA = runs.map((run) => run.currentA);
  if (rateCount(currentsA) < 2) return null;
  const gentle = runsNearCurrent(runs, Math.min(...currentsA));
  const hard = runsNearCurrent(runs, Math.max(...currentsA));
  return {
    gentleA: meanOf(gentle.map((run) => run.currentA)),
    hardA: meanOf(hard.map((run) => run.currentA)),
    retentionFrac: rateRetentionFrac({
      gentleAh: meanOf(gentle.map((run) => run.chargeAh)),
      hardAh: meanOf(hard.map((run) => run.chargeAh)),
    }),
  };
}
