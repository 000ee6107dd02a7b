import { requirePositive } from './rated-energy.ts';
import { requireNotNegative } from './require-not-negative.ts';

/**
 * Temperature rise of a joint at its rated current, from a rise measured at another: heat goes with I².
 *
 * Units   K, A in; K out.
 * Error   steady state and the same cooling; a hot joint's resistance grows, so far above the measured current it reads low.
 * Throws  RangeError if a current is not positive or the rise is negative or not finite.
 * Source  Joule's law with a constant thermal resistance
 * Check   tests/calc/joint-rise.test.ts
 */
export function riseAtRatedK({ riseK, currentA, ratedA }: { riseK: number; currentA: number; ratedA: number }): number {
  requirePositive('riseAtRatedK: currentA', currentA);
  requirePositive('riseAtRatedK: ratedA', ratedA);
  requireNotNegative('riseAtRatedK: riseK', riseK);
  return riseK * (ratedA / currentA) ** 2;
}
