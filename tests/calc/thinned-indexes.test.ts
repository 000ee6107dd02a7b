import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { thinnedIndexes } from '../../src/calc/thinned-indexes.ts';

const rising = (count: number) => Float64Array.from({ length: count }, (_, index) => index);

describe('small cases by hand', () => {
  it('keeps lowest and highest of 3 buckets, first and last: 7 of 12', () => {
    const value = [5, 1, 7, 4, 4, 9, 2, 3, 6, 6, 6, 5];
    expect(thinnedIndexes({ x: rising(12), series: [value], mostPoints: 8 })).toEqual([0, 1, 2, 5, 6, 8, 11]);
  });

  it('keeps the extremes of every series: the dips at 3 and 7 of two series', () => {
    const one = Float64Array.from({ length: 20 }, (_, index) => (index === 3 ? -1 : 0));
    const two = Float64Array.from({ length: 20 }, (_, index) => (index === 7 ? -1 : 0));
    expect(thinnedIndexes({ x: rising(20), series: [one, two], mostPoints: 6 })).toEqual([0, 3, 7, 19]);
  });

  it('returns all 5 of 5 samples, and none of none', () => {
    expect(thinnedIndexes({ x: rising(5), series: [rising(5)], mostPoints: 5 })).toEqual([0, 1, 2, 3, 4]);
    expect(thinnedIndexes({ x: [], series: [[]], mostPoints: 4 })).toEqual([]);
  });

  it('passes over samples without a reading: keeps 1 and 3 of NaN, 2, NaN, 8, NaN, −∞, and both ends', () => {
    const value = [Number.NaN, 2, Number.NaN, 8, Number.NaN, Number.NEGATIVE_INFINITY];
    expect(thinnedIndexes({ x: rising(6), series: [value], mostPoints: 4 })).toEqual([0, 1, 3, 5]);
    expect(thinnedIndexes({ x: rising(6), series: [new Array(6).fill(Number.NaN)], mostPoints: 4 })).toEqual([0, 5]);
  });

  it('cuts by width of the axis, not by count: 1000 samples in one second leave the other hours their share', () => {
    const burst = Array.from({ length: 1000 }, (_, index) => index / 1000);
    const hours = Array.from({ length: 100 }, (_, index) => 100 * (index + 1));
    const x = [...burst, ...hours];
    const value = x.map((_, index) => (index % 2 === 0 ? 13 : 13.2));
    const kept = thinnedIndexes({ x, series: [value], mostPoints: 102 });
    expect(kept.filter((index) => index >= 1000).length).toBeGreaterThan(90);
  });

  it('keeps the extremes, 2 and 4, where all samples share one x', () => {
    const value = [3, 3, 1, 3, 8, 3, 3];
    expect(thinnedIndexes({ x: new Array(7).fill(5), series: [value], mostPoints: 4 })).toEqual([0, 2, 4, 6]);
  });
});

describe('for any samples', () => {
  const sample = fc.oneof(
    { weight: 9, arbitrary: fc.double({ min: -1e6, max: 1e6, noNaN: true }) },
    { weight: 1, arbitrary: fc.constant(Number.NaN) },
  );
  const columns = fc.integer({ min: 1, max: 300 }).chain((count) =>
    fc.record({
      steps: fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: count, maxLength: count }),
      series: fc.array(fc.array(sample, { minLength: count, maxLength: count }), { minLength: 1, maxLength: 3 }),
      extra: fc.integer({ min: 0, max: 100 }),
    }),
  );
  const given = columns.map(({ steps, series, extra }) => {
    let sum = 0;
    const x = steps.map((step) => {
      sum += step;
      return sum;
    });
    return { x, series, mostPoints: 2 + 2 * series.length + extra };
  });
  const holds = (check: (input: { x: number[]; series: number[][]; mostPoints: number }, kept: number[]) => void) =>
    fc.assert(
      fc.property(given, (input) => check(input, thinnedIndexes(input))),
      { seed: 11, numRuns: 500 },
    );

  it('rises strictly, inside the samples, from the first to the last, at most mostPoints', () => {
    holds(({ x, mostPoints }, kept) => {
      expect(kept.length).toBeLessThanOrEqual(mostPoints);
      expect(kept[0]).toBe(0);
      expect(kept.at(-1)).toBe(x.length - 1);
      expect(kept.every((index, place) => Number.isInteger(index) && (place === 0 || index > kept[place - 1]!))).toBe(
        true,
      );
    });
  });

  it('keeps the lowest and the highest value of every series', () => {
    const readings = (values: number[]) => values.filter(Number.isFinite);
    holds(({ series }, kept) => {
      for (const values of series) {
        const keptValues = readings(kept.map((index) => values[index]!));
        expect(Math.min(...keptValues)).toBe(Math.min(...readings(values)));
        expect(Math.max(...keptValues)).toBe(Math.max(...readings(values)));
      }
    });
  });

  it('has every sample left out between two kept ones of its series within one bucket of it', () => {
    holds(({ x, series, mostPoints }, kept) => {
      const buckets = Math.floor((mostPoints - 2) / (2 * series.length));
      const widthX = ((x.at(-1)! - x[0]!) / buckets) * (1 + 1e-9);
      for (const values of series) {
        for (const [index, value] of values.entries()) {
          if (!Number.isFinite(value)) continue;
          const near = kept.filter((place) => Math.abs(x[place]! - x[index]!) <= widthX).map((place) => values[place]!);
          expect(near.some((other) => other <= value) && near.some((other) => other >= value)).toBe(true);
        }
      }
    });
  });
});

// Synthetic: a 12.8 V pack at 20 A for 5 h in 1 000 000 samples, with a knee in the last 3 % and one short dip.
describe('a million samples thinned to 600', () => {
  const count = 1_000_000;
  const dipAt = 637_421;
  const x = Float64Array.from({ length: count }, (_, index) => (index * 18_000) / count);
  const voltageV = Float64Array.from({ length: count }, (_, index) => {
    const beyondKnee = Math.max(0, index / count - 0.97) / 0.03;
    return 13.3 - (0.3 * index) / count - 3 * beyondKnee ** 3 + 0.002 * Math.sin(index);
  });
  voltageV[dipAt] = 11.5;
  const currentA = Float64Array.from({ length: count }, (_, index) => 20 + 0.01 * Math.cos(index * 0.7));
  currentA[dipAt + 1] = 35;
  const kept = thinnedIndexes({ x, series: [voltageV, currentA], mostPoints: 600 });

  it('keeps at most 600 and at least 500 of them', () => {
    expect(kept.length).toBeLessThanOrEqual(600);
    expect(kept.length).toBeGreaterThan(500);
  });

  it('keeps the dip to 11.5 V and the peak of 35 A beside it, one sample each', () => {
    expect(kept).toContain(dipAt);
    expect(kept).toContain(dipAt + 1);
  });

  it('falls below 13, 12.5, 12, 11.5 and 10.5 V at the knee within one of 149 buckets of where the log does', () => {
    const bucketS = 18_000 / 149;
    for (const levelV of [13, 12.5, 12, 11.5, 10.5]) {
      const afterDip = (index: number) => index > dipAt + 1 && voltageV[index]! < levelV;
      const inLog = voltageV.findIndex((_, index) => afterDip(index));
      const inKept = kept.find(afterDip);
      expect(inLog).toBeGreaterThan(dipAt);
      expect(Math.abs(x[inKept!]! - x[inLog]!)).toBeLessThanOrEqual(bucketS);
    }
  });
});

it.each<[string, Parameters<typeof thinnedIndexes>[0]]>([
  ['needs at least 1 series, got 0', { x: [1, 2], series: [], mostPoints: 100 }],
  ['mostPoints must be 6 or more, got 5', { x: [1], series: [[1], [1]], mostPoints: 5 }],
  ['mostPoints must be 4 or more, got NaN', { x: [1], series: [[1]], mostPoints: Number.NaN }],
  ['series must have 2 samples as x, got 3', { x: [1, 2], series: [[1, 2, 3]], mostPoints: 100 }],
  ['x must be finite and not fall, got 1 at 1', { x: [2, 1], series: [[1, 2]], mostPoints: 100 }],
  ['x must be finite and not fall, got NaN at 1', { x: [2, Number.NaN], series: [[1, 2]], mostPoints: 100 }],
])('refuses bad input: %s', (message, input) => {
  expect(() => thinnedIndexes(input)).toThrow(new RangeError(`thinnedIndexes: ${message}`));
});
