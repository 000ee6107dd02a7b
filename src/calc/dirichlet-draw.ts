import { gammaDraw } from './gamma-draw.ts';
import type { Uniform } from './seeded-uniform.ts';

/** Our choice: with every alpha below it, a draw would too often have nothing but parts too small to be written. */
const LEAST_ALPHA = 0.01;

/**
 * One draw of shares from a Dirichlet distribution: gamma draws divided by their sum.
 *
 * Shape   n ≥ 1 positive alphas in; n shares of 0 or more out, which sum to 1. Share i has the mean m = alpha i over
 *         the sum A of all, and the variance m(1 − m) / (A + 1).
 * Throws  RangeError unless all are positive and finite and one is 0.01 or more.
 * Source  L. Devroye, "Non-Uniform Random Variate Generation" (1986), XI.4.1, theorem 4.1
 * Check   tests/calc/draws.test.ts
 */
export function dirichletDraw(alphas: readonly number[], uniform: Uniform): number[] {
  if (!alphas.some((alpha) => alpha >= LEAST_ALPHA)) {
    throw new RangeError(`dirichletDraw: one alpha must be ${LEAST_ALPHA} or more, got ${alphas.join(', ') || 'none'}`);
  }
  for (;;) {
    const parts = alphas.map((alpha) => gammaDraw(alpha, uniform));
    const sum = parts.reduce((total, part) => total + part, 0);
    // Every part was too small to be written: that draw says nothing of the shares.
    if (sum > 0) return parts.map((part) => part / sum);
  }
}
