import { requirePositive } from './rated-energy.ts';
import { requireNotNegative } from './require-not-negative.ts';

/**
 * Share that came out again of what was put in: Ah over Ah is the coulombic, Wh over Wh the energy efficiency.
 *
 * Shape   both in one unit, from one full charge and the run after it.
 * Units   Ah or Wh in; a share out, above 1 if the run began fuller than the charge did.
 * Throws  RangeError if what was put in is not positive, or what came out negative.
 * Source  definition
 * Check   tests/calc/round-trip.test.ts
 */
export function roundTripFrac({ putIn, tookOut }: { putIn: number; tookOut: number }): number {
  requirePositive('roundTripFrac: putIn', putIn);
  requireNotNegative('roundTripFrac: tookOut', tookOut);
  return tookOut / putIn;
}

/**
 * Efficiency of charging alone, or of discharging alone, if both lose the same share.
 *
 * Units   a share in, a share out.
 * Throws  RangeError if the share is negative or not finite.
 * Source  convention of energy modelling manuals for storage: the root of the round trip
 * Check   tests/calc/round-trip.test.ts
 */
export function oneWayFrac(roundTrip: number): number {
  requireNotNegative('oneWayFrac: roundTrip', roundTrip);
  return Math.sqrt(roundTrip);
}
