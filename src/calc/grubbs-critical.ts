import { studentTCritical } from './student-t.ts';

/**
 * The G above which Grubbs' test calls the furthest of n values an outlier, computed for any n instead of read from a
 * table that ends.
 *
 *     G = (n − 1)/√n · √(t² / (n − 2 + t²)),  t exceeded with probability alpha / (sides · n), n − 2 degrees of freedom
 *
 * Shape   count ≥ 3; alpha, 0.05 unless told; sides 2 (either way) unless told.
 * Throws  RangeError if the count is not a whole number ≥ 3 or alpha is not between 0 and 1.
 * Source  NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.17.1
 * Check   tests/calc/grubbs.test.ts
 */
export function grubbsCriticalG({ count, alpha = 0.05, sides = 2 }: GrubbsLevel): number {
  if (!(Number.isInteger(count) && count >= 3)) {
    throw new RangeError(`grubbsCriticalG: count must be a whole number of at least 3, got ${count}`);
  }
  if (!(alpha > 0 && alpha < 1)) throw new RangeError(`grubbsCriticalG: alpha must be within 0 and 1, got ${alpha}`);
  const t = studentTCritical(alpha / (sides * count), count - 2);
  return ((count - 1) / Math.sqrt(count)) * Math.sqrt(t ** 2 / (count - 2 + t ** 2));
}

export interface GrubbsLevel {
  count: number;
  alpha?: number;
  sides?: 1 | 2;
}
