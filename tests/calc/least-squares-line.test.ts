import fc from 'fast-check';
import { linearRegression } from 'simple-statistics';
import { expect, it } from 'vitest';
import { leastSquaresLine } from '../../src/calc/least-squares-line.ts';
import norris from '../fixtures/nist-strd-norris.json';

it('gives the certified slope 1.00211681802045 and intercept −0.262323073774029 of NIST StRD Norris', () => {
  const line = leastSquaresLine(Object.freeze(norris.x), Object.freeze(norris.y));
  expect(line?.slope).toBeCloseTo(norris.certified.slope, 13);
  expect(line?.intercept).toBeCloseTo(norris.certified.intercept, 11);
});

// As printed there, each to 1e-9 of itself; the names are those of our check rows.
it.each([
  ['strd-norris-SSR', 'regressionSquares', 4255954.13232369],
  ['strd-norris-SSE', 'residualSquares', 26.6173985294224],
  ['strd-norris-residualSd', 'residualDeviation', 0.884796396144373],
  ['strd-norris-sdB1', 'slopeDeviation', 0.000429796848199937],
  ['strd-norris-rSquared', 'rSquared', 0.999993745883712],
  ['strd-norris-F', 'f', 5436385.54079785],
] as const)('gives what NIST certifies of Norris, %s: %s %d', (_row, name, certified) => {
  expect(norris.certified[name]).toBe(certified);
  const found = leastSquaresLine(norris.x, norris.y)?.scatter?.[name] ?? Number.NaN;
  expect(Math.abs(found / certified - 1)).toBeLessThan(1e-9);
});

it('goes through two points exactly: slope 2, intercept −1, no scatter (closed form)', () => {
  expect(leastSquaresLine([1, 3], [1, 5])).toEqual({ slope: 2, intercept: -1, scatter: null });
});

// y = 1, 2, 6 at x = 0, 1, 2: slope 5/2, mean 3, residuals ½, −1, ½; squares 12.5 by the line, 1.5 left of 14.
it('leaves 1.5 of 14 about a line through three points: R² 25/28, F 25/3, slope ± √0.75 (by hand)', () => {
  const scatter = leastSquaresLine([0, 1, 2], [1, 2, 6])?.scatter;
  expect(scatter?.regressionSquares).toBeCloseTo(12.5, 12);
  expect(scatter?.residualSquares).toBeCloseTo(1.5, 12);
  expect(scatter?.residualDeviation).toBeCloseTo(Math.sqrt(1.5), 12);
  expect(scatter?.slopeDeviation).toBeCloseTo(Math.sqrt(0.75), 12);
  expect(scatter?.rSquared).toBeCloseTo(25 / 28, 12);
  expect(scatter?.f).toBeCloseTo(25 / 3, 12);
});

it('knows no R² of three equal y, and no F where three points lie on their line', () => {
  const nothing = { regressionSquares: 0, residualSquares: 0, residualDeviation: 0, slopeDeviation: 0 };
  expect(leastSquaresLine([1, 2, 3], [4, 4, 4])?.scatter).toEqual({ ...nothing, rSquared: null, f: null });
  expect(leastSquaresLine([1, 2, 3], [1, 3, 5])?.scatter).toMatchObject({ rSquared: 1, f: null });
});

it('agrees with simple-statistics 7.12.1 to 1e-9 on any 2 to 30 points that are spread in x', () => {
  const value = fc.double({ min: -100, max: 100, noNaN: true });
  fc.assert(
    fc.property(fc.array(fc.tuple(value, value), { minLength: 2, maxLength: 30 }), (given) => {
      // Two points a known way apart keep the slope well conditioned.
      const points: [number, number][] = [...given, [-120, 3], [120, -5]];
      const line = leastSquaresLine(
        points.map(([x]) => x),
        points.map(([, y]) => y),
      );
      const other = linearRegression(points);
      expect(line?.slope).toBeCloseTo(other.m, 9);
      expect(line?.intercept).toBeCloseTo(other.b, 9);
    }),
    { seed: 3 },
  );
});

it('knows no slope over one x', () => {
  expect(leastSquaresLine([2, 2, 2], [1, 2, 3])).toBeNull();
});

it.each<[string, number[], number[]]>([
  ['needs 2 or more points, got 1 x and 1 y', [1], [1]],
  ['needs 2 or more points, got 2 x and 3 y', [1, 2], [1, 2, 3]],
  ['values must be finite, got NaN', [1, 2], [1, Number.NaN]],
  ['values must be finite, got Infinity', [1, Number.POSITIVE_INFINITY], [1, 2]],
])('refuses bad input: %s', (message, x, y) => {
  expect(() => leastSquaresLine(x, y)).toThrow(new RangeError(`leastSquaresLine: ${message}`));
});
