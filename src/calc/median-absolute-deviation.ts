import { requireFinite } from './require-finite.ts';

/**
 * Median of the distances from the median (MAD), unscaled. For normal scatter, 1.4826 · MAD estimates the standard
 * deviation.
 *
 * Shape   at least one value in, one number out.
 * Units   those of the values.
 * Throws  RangeError if there is no value or one is not finite.
 * Source  B. Iglewicz, D. Hoaglin, How to Detect and Handle Outliers, ASQC 1993; definition
 * Check   tests/calc/robust-z.test.ts
 */
export function medianAbsoluteDeviation(values: readonly number[]): number {
  const centre = median(values);
  return median(values.map((value) => Math.abs(value - centre)));
}

/** Middle value, or the mean of the two middle ones. Throws RangeError if there is no value or one is not finite. */
export function median(values: readonly number[]): number {
  for (const value of values) requireFinite('median: value', value);
  const sorted = values.toSorted((one, other) => one - other);
  const upper = sorted[sorted.length >> 1];
  const lower = sorted[(sorted.length - 1) >> 1];
  if (upper === undefined || lower === undefined) throw new RangeError('median: needs at least 1 value, got 0');
  return (lower + upper) / 2;
}
