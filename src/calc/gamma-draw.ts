import { normalDraw } from './normal-draw.ts';
import type { Uniform } from './seeded-uniform.ts';

/**
 * One draw from the gamma distribution of a shape, with scale 1.
 *
 * Shape   alpha > 0 and a source of uniform numbers in, a number of 0 or more out; its mean and its variance are alpha.
 * Error   none beyond that of the uniform numbers; a shape under about 0.01 often gives less than can be written, 0.
 * Throws  RangeError unless alpha is positive and finite.
 * Source  G. Marsaglia and W. W. Tsang, "A simple method for generating gamma variables", ACM Transactions on
 *         Mathematical Software 26 (2000) 363–372; shapes under 1 by their section 6: G(alpha + 1) · U^(1/alpha)
 * Check   tests/calc/draws.test.ts
 */
export function gammaDraw(alpha: number, uniform: Uniform): number {
  if (!(alpha > 0 && Number.isFinite(alpha))) {
    throw new RangeError(`gammaDraw: alpha must be positive and finite, got ${alpha}`);
  }
  if (alpha < 1) return gammaDraw(alpha + 1, uniform) * uniform() ** (1 / alpha);
  const d = alpha - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normalDraw(uniform);
    const v = (1 + c * x) ** 3;
    if (v <= 0) continue;
    const u = uniform();
    // The first test is a squeeze that spares most logarithms; the second alone decides.
    if (u < 1 - 0.0331 * x ** 4) return d * v;
    if (Math.log(u) < (x * x) / 2 + d * (1 - v + Math.log(v))) return d * v;
  }
}
