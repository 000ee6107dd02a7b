import { meanOf } from './mean-of.ts';

/**
 * How much each reading resembles the one before: 0 where readings scatter freely, near 1 where they drift.
 *
 * Shape   readings of one quantity in the order taken, n ≥ 2 and not all alike, in; one number out.
 * Throws  RangeError if there are fewer than two, one is not finite, or all are alike.
 * Source  NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.12, autocorrelation coefficient at lag 1
 * Check   tests/calc/check-cases-runs.test.ts
 */
export function lagOneAutocorrelation(readings: readonly number[]): number {
  const mean = meanOf(readings);
  const offsets = readings.map((reading) => reading - mean);
  const scatter = offsets.reduce((sum, offset) => sum + offset ** 2, 0);
  if (!(scatter > 0) || !Number.isFinite(scatter)) {
    throw new RangeError(
      `lagOneAutocorrelation: readings must differ and be finite, got ${readings.length} alike or not`,
    );
  }
  return offsets.slice(1).reduce((sum, offset, at) => sum + offset * (offsets[at] ?? 0), 0) / scatter;
}
