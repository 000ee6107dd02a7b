/**
 * Arithmetic mean.
 *
 * Shape   n ≥ 1 numbers in, one out, in their unit.
 * Throws  RangeError if there is none, or one is not finite.
 * Source  definition; corrected by the mean of the residuals, so that many large, close values keep their digits
 * Check   tests/calc/mean-of.test.ts: NIST StRD Mavro and Michelso
 */
export function meanOf(values: readonly number[]): number {
  if (values.length === 0) throw new RangeError('meanOf: needs at least 1 value, got 0');
  const strange = values.find((value) => !Number.isFinite(value));
  if (strange !== undefined) throw new RangeError(`meanOf: values must be finite, got ${strange}`);
  const rough = values.reduce((sum, value) => sum + value, 0) / values.length;
  return rough + values.reduce((sum, value) => sum + (value - rough), 0) / values.length;
}
