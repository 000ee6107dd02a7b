import { requirePositive } from './rated-energy.ts';
import { requireNotNegative } from './require-not-negative.ts';

/**
 * Current as a multiple of the rated capacity: 0.2 per hour is "0.2C", empty in five hours.
 *
 * Units   A, Ah in; 1/h out.
 * Throws  RangeError if the current is negative or the capacity not positive.
 * Source  It (A) = rated capacity (Ah) ÷ 1 h (IEC 61960-3 and IEC 62620, from memory)
 * Check   tests/calc/c-rate.test.ts
 */
export function cRatePerH({ currentA, ratedCapacityAh }: { currentA: number; ratedCapacityAh: number }): number {
  requireNotNegative('cRatePerH: currentA', currentA);
  requirePositive('cRatePerH: ratedCapacityAh', ratedCapacityAh);
  return currentA / ratedCapacityAh;
}
