export interface ThinnedIndexesInput {
  /** What the plot's horizontal axis shows, usually time; must not fall. */
  x: ArrayLike<number>;
  /** What is drawn over it, each as long as `x`. A value that is not finite is "no reading". */
  series: readonly ArrayLike<number>[];
  mostPoints: number;
}

/**
 * Which of many samples to draw, so that no dip, peak or knee is lost.
 *
 * Shape   n samples in; strictly rising indexes out, at most `mostPoints`; all of them where n is no more than that.
 *         The axis is cut into buckets of equal width; of each bucket the lowest and the highest sample of every
 *         series are kept (the first of equals), and of the whole the first and the last sample.
 * Error   a sample left out lies between the lowest and the highest kept of its bucket.
 * Throws  RangeError if lengths differ, there is no series, `x` falls or is not finite, or `mostPoints` does not reach
 *         for one bucket (2 + 2 for each series).
 * Source  minima and maxima of pixel columns, as in Jugel et al., M4, PVLDB 7(10), 2014, doi 10.14778/2732951.2732953
 * Check   tests/calc/thinned-indexes.test.ts
 */
export function thinnedIndexes({ x, series, mostPoints }: ThinnedIndexesInput): number[] {
  const buckets = bucketCount(series.length, mostPoints);
  requireColumns(x, series);
  const count = x.length;
  if (count <= mostPoints) return Array.from({ length: count }, (_, index) => index);
  const lowX = valueAt(x, 0);
  const width = (valueAt(x, count - 1) - lowX) / buckets;
  const kept: number[] = [0];
  let start = 0;
  for (let bucket = 1; bucket <= buckets; bucket++) {
    let end = bucket === buckets ? count : start;
    while (end < count && valueAt(x, end) < lowX + bucket * width) end++;
    keepRising(kept, extremesBetween(series, start, end));
    start = end;
  }
  keepRising(kept, [count - 1]);
  return kept;
}

/** Lowest and highest of every series in one bucket, rising; none where nothing was read. */
function extremesBetween(series: readonly ArrayLike<number>[], start: number, end: number): number[] {
  const found: number[] = [];
  for (const values of series) {
    let lowest = -1;
    let highest = -1;
    for (let index = start; index < end; index++) {
      const value = valueAt(values, index);
      if (!Number.isFinite(value)) continue;
      if (lowest < 0 || value < valueAt(values, lowest)) lowest = index;
      if (highest < 0 || value > valueAt(values, highest)) highest = index;
    }
    if (lowest >= 0) found.push(lowest, highest);
  }
  return found.sort((a, b) => a - b);
}

function keepRising(kept: number[], indexes: readonly number[]): void {
  for (const index of indexes) if (index > (kept.at(-1) ?? -1)) kept.push(index);
}

function bucketCount(seriesCount: number, mostPoints: number): number {
  const perBucket = 2 * seriesCount;
  const buckets = Math.floor((mostPoints - 2) / perBucket);
  if (!(seriesCount >= 1)) throw new RangeError('thinnedIndexes: needs at least 1 series, got 0');
  if (!(buckets >= 1 && Number.isFinite(buckets))) {
    throw new RangeError(`thinnedIndexes: mostPoints must be ${2 + perBucket} or more, got ${mostPoints}`);
  }
  return buckets;
}

function requireColumns(x: ArrayLike<number>, series: readonly ArrayLike<number>[]): void {
  const odd = series.find((values) => values.length !== x.length);
  if (odd) throw new RangeError(`thinnedIndexes: series must have ${x.length} samples as x, got ${odd.length}`);
  for (let index = 0; index < x.length; index++) {
    const value = valueAt(x, index);
    if (!Number.isFinite(value) || (index > 0 && value < valueAt(x, index - 1))) {
      throw new RangeError(`thinnedIndexes: x must be finite and not fall, got ${value} at ${index}`);
    }
  }
}

/** Indexes are inside by construction; NaN, "no reading", keeps the type honest without a check per sample. */
function valueAt(values: ArrayLike<number>, index: number): number {
  return values[index] ?? Number.NaN;
}
