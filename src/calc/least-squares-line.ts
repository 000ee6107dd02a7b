import { meanOf } from './mean-of.ts';

export interface Line {
  slope: number;
  intercept: number;
}

/**
 * Straight line y = intercept + slope·x through points, least squares of the distances in y.
 *
 * Shape   two arrays of one length n ≥ 2 in; null if all x are equal.
 * Throws  RangeError if the lengths differ, n < 2 or a value is not finite.
 * Source  normal equations about the means (which keeps the digits that the raw sums lose)
 * Check   tests/calc/least-squares-line.test.ts: NIST StRD Norris; simple-statistics
 */
export function leastSquaresLine(x: readonly number[], y: readonly number[]): Line | null {
  if (x.length !== y.length || x.length < 2) {
    throw new RangeError(`leastSquaresLine: needs 2 or more points, got ${x.length} x and ${y.length} y`);
  }
  const strange = [...x, ...y].find((value) => !Number.isFinite(value));
  if (strange !== undefined) throw new RangeError(`leastSquaresLine: values must be finite, got ${strange}`);
  const meanX = meanOf(x);
  const meanY = meanOf(y);
  let sumXX = 0;
  let sumXY = 0;
  for (const [place, value] of x.entries()) {
    sumXX += (value - meanX) ** 2;
    sumXY += (value - meanX) * ((y[place] ?? Number.NaN) - meanY);
  }
  if (sumXX === 0) return null;
  const slope = sumXY / sumXX;
  return { slope, intercept: meanY - slope * meanX };
}
