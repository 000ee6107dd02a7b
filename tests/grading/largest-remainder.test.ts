import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundedShares } from '../../src/grading/largest-remainder.ts';

describe('rounded shares', () => {
  // By hand: quotas 4.70, 1.60, 1.58, 1.20, 0.61, 0.31; cut down 4, 1, 1, 1, 0, 0 = 7; the three seats left go to the
  // remainders 0.70, 0.61 and 0.60.
  it('gives ten seats as 5, 2, 1, 1, 1, 0', () => {
    const votes = [47_000, 16_000, 15_800, 12_000, 6_100, 3_100];
    expect(roundedShares(votes, { unit: 10_000 })).toEqual([5, 2, 1, 1, 1, 0]);
  });

  it('gives the missing unit to the first of equal remainders: thirds of 10 are 4, 3, 3', () => {
    expect(roundedShares([10 / 3, 10 / 3, 10 / 3], { unit: 1 })).toEqual([4, 3, 3]);
  });

  it('sums tenths of a point to the nearest tenth of the whole', () => {
    // 16.667 + 3.906 + 4.063 = 24.635: 246 tenths; cut down 166 + 39 + 40 = 245, one to the largest remainder, 0.67
    expect(roundedShares([50 / 3, 3.90625, 4.0625], { unit: 0.1 })).toEqual([167, 39, 40]);
  });

  it('reaches a stated total: 247 tenths need one more', () => {
    expect(roundedShares([50 / 3, 3.90625, 4.0625], { unit: 0.1, totalCount: 247 })).toEqual([167, 39, 41]);
  });

  it('gives nothing for nothing', () => {
    expect(roundedShares([], { unit: 0.1 })).toEqual([]);
    expect(roundedShares([0, 0], { unit: 0.1 })).toEqual([0, 0]);
  });

  it('keeps every count within one unit of its share, and the sum at the nearest whole', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { maxLength: 30 }), (shares) => {
        const counts = roundedShares(Object.freeze(shares), { unit: 0.1 });
        for (const [place, count] of counts.entries()) {
          expect(Math.abs(count - (shares[place] ?? Number.NaN) / 0.1)).toBeLessThanOrEqual(1);
        }
        const whole = shares.reduce((sum, share) => sum + share / 0.1, 0);
        expect(counts.reduce((sum, count) => sum + count, 0)).toBe(Math.round(whole));
      }),
      { numRuns: 5000 },
    );
  });

  it.each([
    ['a negative share', [-0.1], { unit: 1 }, /0 or more, got -0.1/],
    ['a share that is no number', [Number.NaN], { unit: 1 }, /0 or more, got NaN/],
    ['a unit of 0', [1], { unit: 0 }, /above 0, got 0/],
    ['a total out of reach', [1.5, 1.5], { unit: 1, totalCount: 5 }, /within one unit a share, got 5/],
    ['a total below the cut', [1.5, 1.5], { unit: 1, totalCount: 1 }, /within one unit a share, got 1/],
  ])('refuses %s', (_, shares, options, message) => {
    expect(() => roundedShares(shares, options)).toThrow(message);
  });
});
