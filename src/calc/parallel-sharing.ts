import { requireNotNegative } from './require-not-negative.ts';

/**
 * How evenly packs or strings in parallel shared a run, by the charge each gave.
 *
 * Shape   at least two in; the share of each out, in the same order, summing to 1, and how far the worst is off an equal
 *         share, as a fraction of it: shares of 0.55 and 0.45 diverge by 0.10.
 * Units   Ah in; fractions out.
 * Throws  RangeError if there are fewer than two, a charge is negative or not finite, or none gave any.
 * Source  definition
 * Check   tests/calc/parallel-sharing.test.ts
 */
export function parallelSharing(strings: readonly { chargeAh: number }[]): ParallelSharing {
  if (strings.length < 2) throw new RangeError(`parallelSharing: needs at least 2 strings, got ${strings.length}`);
  let totalAh = 0;
  for (const { chargeAh } of strings) {
    requireNotNegative('parallelSharing: chargeAh', chargeAh);
    totalAh += chargeAh;
  }
  if (totalAh === 0) throw new RangeError('parallelSharing: at least one chargeAh must be over 0, got none');
  const shares = strings.map(({ chargeAh }) => chargeAh / totalAh);
  const worstDivergenceFrac = Math.max(...shares.map((share) => Math.abs(share * strings.length - 1)));
  return { shares, worstDivergenceFrac };
}

export interface ParallelSharing {
  shares: number[];
  worstDivergenceFrac: number;
}
