import { describe, expect, it } from 'vitest';
import { seededUniform } from '../../src/calc/seeded-uniform.ts';
import { KOLMOGOROV_1_IN_1000, kolmogorovDistance } from './kolmogorov-distance.ts';

const drawn = (seed: number, count: number) => {
  const uniform = seededUniform(seed);
  return Array.from({ length: count }, () => uniform());
};

describe('seededUniform', () => {
  it('gives the same 1000 numbers for one seed, and others for the next', () => {
    expect(drawn(7, 1000)).toEqual(drawn(7, 1000));
    expect(drawn(7, 1000).filter((value, place) => value === drawn(8, 1000)[place])).toEqual([]);
  });

  // Mean ½ and variance 1/12 of the uniform distribution; 4 deviations of each estimate, √(1/12/n) and √(1/180/n).
  it('has the mean 1/2 and the variance 1/12 over 100,000 numbers, all of them from 0 up to but not 1', () => {
    const values = drawn(1, 100_000);
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    const variance = values.reduce((sum, value) => sum + (value - 0.5) ** 2, 0) / values.length;
    expect(Math.abs(mean - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / values.length));
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / values.length));
    expect(values.filter((value) => value < 0 || value >= 1)).toEqual([]);
  });

  it('is spread evenly, also over the first number of each of 2000 neighbouring seeds', () => {
    const evenly = (x: number) => x;
    expect(kolmogorovDistance(drawn(5, 20_000), evenly) * Math.sqrt(20_000)).toBeLessThan(KOLMOGOROV_1_IN_1000);
    const firsts = Array.from({ length: 2000 }, (_, seed) => drawn(seed, 1)[0] ?? Number.NaN);
    expect(kolmogorovDistance(firsts, evenly) * Math.sqrt(2000)).toBeLessThan(KOLMOGOROV_1_IN_1000);
  });

  it.each([0.5, Number.NaN, 2 ** 32, -(2 ** 31) - 1])('refuses the seed %s', (seed) => {
    expect(() => seededUniform(seed)).toThrow(RangeError);
  });

  it('takes the seeds at the ends of 32 bits: −2³¹ and 2³² − 1', () => {
    for (const seed of [-(2 ** 31), 2 ** 32 - 1]) expect(seededUniform(seed)()).toBeLessThan(1);
  });
});
