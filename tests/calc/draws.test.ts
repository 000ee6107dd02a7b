import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { dirichletDraw } from '../../src/calc/dirichlet-draw.ts';
import { gammaDraw } from '../../src/calc/gamma-draw.ts';
import { normalDraw } from '../../src/calc/normal-draw.ts';
import { seededUniform, type Uniform } from '../../src/calc/seeded-uniform.ts';
import { KOLMOGOROV_1_IN_1000, kolmogorovDistance } from './kolmogorov-distance.ts';

const { normal, gamma, beta } = jstat.jStat;
const COUNT = 20_000;

function drawn(draw: (uniform: Uniform) => number, seed: number): number[] {
  const uniform = seededUniform(seed);
  return Array.from({ length: COUNT }, () => draw(uniform));
}

const meanOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

function expectFits(sample: readonly number[], cdf: (x: number) => number): void {
  expect(kolmogorovDistance(sample, cdf) * Math.sqrt(sample.length)).toBeLessThan(KOLMOGOROV_1_IN_1000);
}

describe('normalDraw', () => {
  it('fits the distribution function of jstat 1.9 within Kolmogorov’s 1 in 1000 over 20,000 draws', () => {
    expectFits(drawn(normalDraw, 11), (x) => normal.cdf(x, 0, 1));
  });
});

describe('gammaDraw', () => {
  it.each([0.12, 0.5, 0.99, 1, 2.5, 12, 60])('fits the distribution function of jstat 1.9 at the shape %s', (alpha) => {
    expectFits(
      drawn((uniform) => gammaDraw(alpha, uniform), 3),
      (x) => gamma.cdf(x, alpha, 1),
    );
  });

  // Mean alpha, variance alpha, fourth central moment 3·alpha² + 6·alpha: the variance of the variance is (μ4 − alpha²)/n.
  it.each([0.3, 1, 6.5, 40])('has the mean and the variance %s within 4 deviations', (alpha) => {
    const sample = drawn((uniform) => gammaDraw(alpha, uniform), 4);
    const variance = meanOf(sample.map((value) => (value - alpha) ** 2));
    expect(Math.abs(meanOf(sample) - alpha)).toBeLessThan(4 * Math.sqrt(alpha / COUNT));
    expect(Math.abs(variance - alpha)).toBeLessThan(4 * Math.sqrt((2 * alpha ** 2 + 6 * alpha) / COUNT));
  });

  it.each([0, -1, Number.NaN, Infinity])('refuses the shape %s', (alpha) => {
    expect(() => gammaDraw(alpha, seededUniform(1))).toThrow(RangeError);
  });
});

describe('dirichletDraw', () => {
  const ALPHAS = Object.freeze([6, 12, 12, 6, 13.2, 10.8]);
  const uniform = seededUniform(9);
  const shares = Array.from({ length: COUNT }, () => dirichletDraw(ALPHAS, uniform));

  it('gives shares that sum to 1 within 1e-12', () => {
    for (const draw of shares) expect(draw.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  // Closed form: share i ~ Beta(alpha i, 60 − alpha i), mean alpha i / 60, variance m(1 − m)/61.
  it.each(ALPHAS.map((alpha, place) => [place, alpha] as const))(
    'gives share %s the mean %s / 60, the variance m(1 − m)/61 and the beta distribution of jstat 1.9',
    (place, alpha) => {
      const sample = shares.map((draw) => draw[place] ?? Number.NaN);
      const m = alpha / 60;
      const variance = (m * (1 - m)) / 61;
      expect(Math.abs(meanOf(sample) - m)).toBeLessThan(4 * Math.sqrt(variance / COUNT));
      // A beta this near the normal has a fourth moment near 3 variances squared: 4 deviations are 4·√(2/n) of it.
      expect(meanOf(sample.map((share) => (share - m) ** 2)) / variance - 1).toBeLessThan(4 * Math.sqrt(2.2 / COUNT));
      expect(meanOf(sample.map((share) => (share - m) ** 2)) / variance - 1).toBeGreaterThan(
        -4 * Math.sqrt(2.2 / COUNT),
      );
      expectFits(sample, (x) => beta.cdf(x, alpha, 60 - alpha));
    },
  );

  // Closed form: covariance −m i·m j/(A + 1). A mere scaling of independent shares would have another.
  it('makes shares 1 and 2 vary against each other with the covariance −0.2·0.2/61', () => {
    const products = shares.map(([, one = Number.NaN, two = Number.NaN]) => (one - 0.2) * (two - 0.2));
    const deviation = Math.sqrt(meanOf(products.map((product) => (product + 0.04 / 61) ** 2)) / COUNT);
    expect(Math.abs(meanOf(products) + 0.04 / 61)).toBeLessThan(4 * deviation);
  });

  it('draws again where every part was too small to be written, and never gives NaN', () => {
    // For each part a point of the polar method, a number that the squeeze takes, and 0 ** 2 for the boost.
    const first = [0.75, 0.5, 0.5, 0, 0.75, 0.5, 0.5, 0];
    let place = 0;
    const rest = seededUniform(2);
    const draw = dirichletDraw([0.5, 0.5], () => first[place++] ?? rest());
    expect(place).toBeGreaterThan(first.length);
    expect(draw.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  it('refuses no alphas, one of 0, and ones so small that nothing can be written: under 0.01', () => {
    for (const alphas of [[], [1, 0], [0.009, 0.001]]) {
      expect(() => dirichletDraw(alphas, seededUniform(1))).toThrow(RangeError);
    }
  });
});
