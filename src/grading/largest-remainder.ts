/**
 * Whole multiples of a unit, each within one unit of its share, that add up to a whole total: each share is cut down,
 * and the units still missing go to the largest remainders, the first of equal ones first.
 *
 * Shape   n shares ≥ 0 in, n whole counts of the unit out (multiply by it to print). `totalCount` is the sum wanted,
 *         by default the nearest to the shares' own.
 * Throws  RangeError if a share is negative or not finite, the unit is not above 0, or no cut reaches the total
 * Source  method of largest remainders (Hamilton)
 * Check   tests/grading/largest-remainder.test.ts
 */
export function roundedShares(
  shares: readonly number[],
  { unit, totalCount }: { unit: number; totalCount?: number },
): number[] {
  if (!(unit > 0)) throw new RangeError(`roundedShares: unit must be above 0, got ${unit}`);
  for (const share of shares) {
    if (!(share >= 0 && share < Number.POSITIVE_INFINITY)) {
      throw new RangeError(`roundedShares: every share must be 0 or more, got ${share}`);
    }
  }
  const exact = shares.map((share) => share / unit);
  const counts = exact.map(Math.floor);
  const missing = (totalCount ?? Math.round(sumOf(exact))) - sumOf(counts);
  if (missing < 0 || missing > counts.length) {
    throw new RangeError(`roundedShares: totalCount must be within one unit a share, got ${totalCount}`);
  }
  const byRemainder = exact
    .map((count, place) => ({ place, remainder: count - Math.floor(count) }))
    .toSorted((one, other) => other.remainder - one.remainder);
  const topped = new Set(byRemainder.slice(0, missing).map(({ place }) => place));
  return counts.map((count, place) => (topped.has(place) ? count + 1 : count));
}

function sumOf(counts: readonly number[]): number {
  return counts.reduce((sum, count) => sum + count, 0);
}
