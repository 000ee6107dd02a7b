/**
 * Median: the middle value, or the mean of the two middle ones.
 *
 * Throws  RangeError for an empty list.
 * Check   tests/bench/percentiles.test.ts
 */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle];
  const lower = sorted[sorted.length - 1 - middle];
  if (upper === undefined || lower === undefined) throw new RangeError('median: needs at least one value, got none');
  return (lower + upper) / 2;
}

/**
 * Percentile by nearest rank: the smallest value that at least `sharePct` per cent of the values do not exceed.
 *
 * Throws  RangeError for an empty list, or a share outside 0 < sharePct ≤ 100.
 * Source  nearest-rank definition, e.g. Hyndman and Fan 1996, "Sample quantiles in statistical packages", definition 1
 * Check   tests/bench/percentiles.test.ts
 */
export function percentile(values: readonly number[], sharePct: number): number {
  if (!(sharePct > 0 && sharePct <= 100)) {
    throw new RangeError(`percentile: the share must be over 0 and up to 100 %, got ${sharePct}`);
  }
  const rank = Math.ceil((values.length * sharePct) / 100);
  const found = values.toSorted((a, b) => a - b)[rank - 1];
  if (found === undefined) throw new RangeError('percentile: needs at least one value, got none');
  return found;
}
