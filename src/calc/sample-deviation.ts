import { meanOf } from './mean-of.ts';

/**
 * Standard deviation of a sample (divisor n − 1), in two passes with the correction for the rounded mean.
 *
 * Shape   at least two values in, one number out.
 * Units   those of the values.
 * Throws  RangeError if there are fewer than two values or one is not finite.
 * Source  T. F. Chan, G. H. Golub, R. J. LeVeque, The American Statistician 37 (1983) 242, eq. 1.7 (corrected two-pass),
 *         from memory
 * Check   tests/calc/sample-deviation.test.ts
 */
export function sampleDeviation(values: readonly number[]): number {
  if (values.length < 2) throw new RangeError(`sampleDeviation: needs at least 2 values, got ${values.length}`);
  const mean = meanOf(values);
  let squares = 0;
  let rest = 0;
  for (const value of values) {
    squares += (value - mean) ** 2;
    rest += value - mean;
  }
  return Math.sqrt(Math.max(0, squares - rest ** 2 / values.length) / (values.length - 1));
}
