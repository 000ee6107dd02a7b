import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { framedTicks, niceTicks } from '../../../src/drawing/plots/nice-ticks.ts';

describe('niceTicks', () => {
  // Worked by hand: the finest of 1, 2, 5 × 10ⁿ that leaves no more ticks than asked.
  it.each([
    [0, 10, 6, [0, 2, 4, 6, 8, 10], 0],
    [0, 10, 5, [0, 5, 10], 0],
    [18, 28, 6, [18, 20, 22, 24, 26, 28], 0],
    [0, 0.3, 4, [0, 0.1, 0.2, 0.3], 1],
    [3.287, 3.301, 4, [3.29, 3.295, 3.3], 3],
    [-20, 20, 3, [-20, 0, 20], 0],
    [0, 5234, 4, [0, 2000, 4000], 0],
    [7, 9, 1, [8], 0],
  ])('from %d to %d with at most %d gives %j with %d decimals', (low, high, most, values, decimals) => {
    const ticks = niceTicks({ low, high }, most);
    expect(ticks.values).toEqual(values);
    expect(ticks.decimals).toBe(decimals);
  });

  it('never gives more than asked, nor one outside the range, for 500 ranges', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
        fc.integer({ min: 1, max: 12 }),
        (low, span, most) => {
          const { values, step } = niceTicks({ low, high: low + span }, most);
          expect(values.length).toBeLessThanOrEqual(most);
          for (const value of values) {
            expect(value).toBeGreaterThanOrEqual(low - step * 1e-6);
            expect(value).toBeLessThanOrEqual(low + span + step * 1e-6);
          }
        },
      ),
      { numRuns: 500 },
    );
  });

  it.each([
    ['low equals high', 3, 3, 5],
    ['low above high', 4, 3, 5],
    ['not a number', Number.NaN, 3, 5],
    ['no end', 0, Infinity, 5],
    ['wider than a number can say', -1.5e308, 1.5e308, 5],
    ['no tick wanted', 0, 1, 0],
  ])('refuses bad input: %s', (_, low, high, most) => {
    expect(() => niceTicks({ low, high }, most)).toThrow(RangeError);
  });
});

describe('framedTicks', () => {
  it('moves 19.7 … 27.4 out to 18 … 28 with at most 5 ticks in the range, and ticks both ends', () => {
    // 20, 22, 24, 26 lie in the range; 18 and 28 frame it.
    const frame = framedTicks({ low: 19.7, high: 27.4 }, 5);
    expect([frame.low, frame.high]).toEqual([18, 28]);
    expect(frame.values).toEqual([18, 20, 22, 24, 26, 28]);
  });

  it('leaves 0 … 0.3 as it is, without noise', () => {
    expect(framedTicks({ low: 0, high: 0.3 }, 4).values).toEqual([0, 0.1, 0.2, 0.3]);
  });
});
