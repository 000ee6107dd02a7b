import { meanOf } from './mean-of.ts';

export interface Line {
  slope: number;
  intercept: number;
  /** Null of two points: a line meets any two. */
  scatter: LineScatter | null;
}

/** How the points lie about their line. */
export interface LineScatter {
  /** Sum of squares that the line accounts for, and the one left about it. */
  regressionSquares: number;
  residualSquares: number;
  /** With n − 2 degrees of freedom, as is the next. */
  residualDeviation: number;
  /** Standard deviation of the slope, if the points scatter alike and independently. */
  slopeDeviation: number;
  /** Null where all y are equal. */
  rSquared: number | null;
  /** Null where nothing is left about the line. */
  f: number | null;
}

/**
 * Straight line y = intercept + slope·x through points, least squares of the distances in y, and their scatter about it.
 *
 * Shape   two arrays of one length n ≥ 2 in; null if all x are equal.
 * Throws  RangeError if the lengths differ, n < 2 or a value is not finite.
 * Source  normal equations about the means (which keeps the digits that the raw sums lose); NIST/SEMATECH e-Handbook
 *         of Statistical Methods 4.4.3.1 and 4.4.4.2 (not opened), whose figures NIST StRD certifies
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
  const offX = x.map((value) => value - meanX);
  const offY = y.map((value) => value - meanY);
  const sumXX = sumOfProducts(offX, offX);
  if (sumXX === 0) return null;
  const slope = sumOfProducts(offX, offY) / sumXX;
  return { slope, intercept: meanY - slope * meanX, scatter: scatterOf({ offX, offY, sumXX, slope }) };
}

function scatterOf(about: { offX: number[]; offY: number[]; sumXX: number; slope: number }): LineScatter | null {
  const { offX, offY, sumXX, slope } = about;
  const freedom = offX.length - 2;
  if (freedom === 0) return null;
  const left = offX.map((off, place) => (offY[place] ?? Number.NaN) - slope * off);
  const residualSquares = sumOfProducts(left, left);
  const regressionSquares = slope ** 2 * sumXX;
  const totalSquares = regressionSquares + residualSquares;
  const residualVariance = residualSquares / freedom;
  return {
    regressionSquares,
    residualSquares,
    residualDeviation: Math.sqrt(residualVariance),
    slopeDeviation: Math.sqrt(residualVariance / sumXX),
    rSquared: totalSquares === 0 ? null : regressionSquares / totalSquares,
    f: residualVariance === 0 ? null : regressionSquares / residualVariance,
  };
}

function sumOfProducts(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, place) => sum + value * (b[place] ?? Number.NaN), 0);
}
