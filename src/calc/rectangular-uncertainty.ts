import { requireNotNegative } from './require-not-negative.ts';

/**
 * Standard uncertainty of a value known only to lie within ± a half-width, everywhere in it alike.
 *
 * Units   the half-width's unit out, k = 1.
 * Throws  RangeError if the half-width is negative or not finite.
 * Source  JCGM 100:2008 (GUM) 4.3.7: u² = a²/3, number from memory
 * Check   tests/calc/rectangular-uncertainty.test.ts
 */
export function rectangularUncertainty(halfWidth: number): number {
  requireNotNegative('rectangularUncertainty: halfWidth', halfWidth);
  return halfWidth / Math.sqrt(3);
}
