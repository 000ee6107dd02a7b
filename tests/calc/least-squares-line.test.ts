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

it('goes through two points exactly: slope 2, intercept −1 (closed form)', () => {
  expect(leastSquaresLine([1, 3], [1, 5])).toEqual({ slope: 2, intercept: -1 });
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
