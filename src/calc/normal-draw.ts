import type { Uniform } from './seeded-uniform.ts';

/**
 * One draw from the normal distribution with mean 0 and deviation 1.
 *
 * Error   none beyond that of the uniform numbers it is made of.
 * Source  G. Marsaglia and T. A. Bray, "A convenient method for generating normal variables", SIAM Review 6 (1964):
 *         the polar method; its second number is not kept, so that a draw depends on nothing but `uniform`
 * Check   tests/calc/draws.test.ts
 */
export function normalDraw(uniform: Uniform): number {
  for (;;) {
    const x = 2 * uniform() - 1;
    const y = 2 * uniform() - 1;
    const square = x * x + y * y;
    if (square > 0 && square < 1) return x * Math.sqrt((-2 * Math.log(square)) / square);
  }
}
