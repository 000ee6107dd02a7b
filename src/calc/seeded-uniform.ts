import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** A source of numbers from 0 up to but not 1, each as likely as any other. */
export type Uniform = () => number;

/** The first numbers after neighbouring seeds are alike; our choice, several times what it takes to lose that. */
const LEFT_OUT = 64;

/**
 * Numbers that look random and are the same for the same seed, on every machine.
 *
 * Shape   a whole number in, a function out that gives the next number, 0 ≤ u < 1, in steps of 2⁻⁵³.
 * Throws  RangeError unless the seed is a whole number of 32 bits.
 * Source  D. Blackman and S. Vigna, "Scrambled linear pseudorandom number generators" (2021): xoroshiro128+, by pure-rand
 * Check   tests/calc/seeded-uniform.test.ts
 */
export function seededUniform(seed: number): Uniform {
  if (!(Number.isInteger(seed) && seed >= -(2 ** 31) && seed < 2 ** 32)) {
    throw new RangeError(`seededUniform: seed must be a whole number of 32 bits, got ${seed}`);
  }
  const generator = xoroshiro128plus(seed);
  for (let step = 0; step < LEFT_OUT; step++) generator.next();
  return () => uniformFloat64(generator);
}
