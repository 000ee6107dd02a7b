import { median, medianAbsoluteDeviation } from './median-absolute-deviation.ts';

export type RobustZ =
  | { ok: true; median: number; mad: number; z: number[]; outlierIndexes: number[] }
  | { ok: false; because: 'madZero' };

/** Φ⁻¹(3/4) as Iglewicz and Hoaglin print it; its reciprocal is the 1.4826 of other books. */
export const ROBUST_Z_FACTOR = 0.6745;
/** A value stands apart beyond this. Source: Iglewicz and Hoaglin 1993, who recommend 3.5. */
export const ROBUST_Z_LIMIT = 3.5;

/**
 * How far each value stands from the median in robust standard deviations: z = 0.6745 · (x − median) / MAD.
 *
 * Shape   at least one value in; one z per value out, in the same order, with the indexes where |z| > 3.5. A MAD of 0
 *         (more than half the values equal, as from a coarse meter) says nothing about scatter: cannot tell.
 * Units   z has none.
 * Error   the factor is printed to four digits: 0.002 %.
 * Throws  RangeError if there is no value or one is not finite.
 * Source  B. Iglewicz, D. Hoaglin, How to Detect and Handle Outliers, ASQC 1993
 * Check   tests/calc/robust-z.test.ts
 */
export function robustZ(values: readonly number[]): RobustZ {
  const centre = median(values);
  const mad = medianAbsoluteDeviation(values);
  if (isNoise(mad, centre)) return { ok: false, because: 'madZero' };
  const z = values.map((value) => (ROBUST_Z_FACTOR * (value - centre)) / mad);
  const outlierIndexes = z.flatMap((distance, index) => (Math.abs(distance) > ROBUST_Z_LIMIT ? [index] : []));
  return { ok: true, median: centre, mad, z, outlierIndexes };
}

/** A distance no larger than the last bits of the values it was taken from is none. */
function isNoise(distance: number, size: number): boolean {
  return distance <= 8 * Number.EPSILON * Math.abs(size);
}
