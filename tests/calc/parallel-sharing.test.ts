import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parallelSharing } from '../../src/calc/parallel-sharing.ts';

const of = (...chargesAh: number[]) => parallelSharing(Object.freeze(chargesAh.map((chargeAh) => ({ chargeAh }))));

describe('parallelSharing', () => {
  it('finds shares of 0.55 and 0.45 and a divergence of 10 % for 55 and 45 Ah', () => {
    const { shares, worstDivergenceFrac } = of(55, 45);
    expect(shares).toEqual([0.55, 0.45]);
    expect(worstDivergenceFrac).toBeCloseTo(0.1, 12);
  });

  it('finds no divergence between equal ones, and 100 % where one of two gave nothing', () => {
    expect(of(40, 40, 40).worstDivergenceFrac).toBeCloseTo(0, 12);
    expect(of(100, 0)).toEqual({ shares: [1, 0], worstDivergenceFrac: 1 });
  });

  // Two resistances in parallel share as their inverses: 2 mΩ and 3 mΩ as 3 to 2, 20 % off.
  it('finds the 20 % of a 2 mΩ and a 3 mΩ string', () => {
    expect(of(100 * (3 / 5), 100 * (2 / 5)).worstDivergenceFrac).toBeCloseTo(0.2, 12);
  });

  it('gives shares that sum to 1, in the order given', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.001, max: 1e3, noNaN: true }), { minLength: 2, maxLength: 12 }),
        (charges) => {
          const { shares } = of(...charges);
          expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
          // Charges a last bit apart have one share, so the share at the largest is looked at, not its place.
          expect(shares[charges.indexOf(Math.max(...charges))]).toBe(Math.max(...shares));
        },
      ),
    );
  });

  it.each([
    ['one string', [5]],
    ['negative', [5, -1]],
    ['not finite', [5, Number.NaN]],
    ['all zero', [0, 0]],
  ])('refuses bad input: %s', (_name, charges) => {
    expect(() => of(...charges)).toThrow(RangeError);
  });
});
