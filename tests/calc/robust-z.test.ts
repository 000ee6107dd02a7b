import fc from 'fast-check';
import jstat from 'jstat';
import { medianAbsoluteDeviation as otherMad, median as otherMedian } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { median, medianAbsoluteDeviation } from '../../src/calc/median-absolute-deviation.ts';
import { ROBUST_Z_FACTOR, robustZ } from '../../src/calc/robust-z.ts';
import fixture from '../fixtures/robust-z.json';

function zOf(values: readonly number[]): { z: number[]; outlierIndexes: number[] } {
  const found = robustZ(Object.freeze([...values]));
  if (!found.ok) throw new Error(found.because);
  return found;
}

describe('median and MAD', () => {
  it.each(fixture.rows)('finds median $median and MAD $mad', ({ data, ...row }) => {
    expect(median(data)).toBeCloseTo(row.median, 12);
    expect(medianAbsoluteDeviation(data)).toBeCloseTo(row.mad, 12);
  });

  it('agrees with simple-statistics 7.12 on any list', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1e3, max: 1e3, noNaN: true }), { minLength: 1, maxLength: 40 }),
        (values) => {
          expect(median(values)).toBeCloseTo(otherMedian(values), 9);
          expect(medianAbsoluteDeviation(values)).toBeCloseTo(otherMad(values), 9);
        },
      ),
    );
  });

  it('leaves the list as it was and refuses an empty one or a value that is not finite', () => {
    const values = Object.freeze([3, 1, 2]);
    expect(median(values)).toBe(2);
    expect(values).toEqual([3, 1, 2]);
    expect(() => median([])).toThrow(RangeError);
    expect(() => medianAbsoluteDeviation([1, Number.NaN])).toThrow(RangeError);
  });
});

describe('robustZ', () => {
  it('uses 0.6745, the reciprocal of the printed 1.4826, both Φ⁻¹(3/4) of jstat 1.9 to four digits', () => {
    expect(1 / ROBUST_Z_FACTOR).toBeCloseTo(1.4826, 4);
    expect(ROBUST_Z_FACTOR).toBeCloseTo(jstat.jStat.normal.inv(0.75, 0, 1), 4);
    expect(medianAbsoluteDeviation([1, 2, 3, 4, 5, 6, 7, 8, 9]) * 1.4826).toBeCloseTo(2.9652, 4);
  });

  it('finds the printed z of 10, 12, 12, 13, 12, 11, 14, 300, and 300 alone beyond 3.5', () => {
    const row = fixture.rows[0];
    const { z, outlierIndexes } = zOf(row?.data ?? []);
    expect(z).toHaveLength(8);
    for (const [index, printed] of (row?.modifiedZ ?? []).entries()) expect(z[index]).toBeCloseTo(printed, 4);
    expect(outlierIndexes).toEqual([7]);
    expect(row?.outliersAt35).toEqual([300]);
  });

  it('puts a cell at 3.260 V among seven on the plateau at −18.21', () => {
    const row = fixture.rows[2];
    const { z, outlierIndexes } = zOf(row?.data ?? []);
    expect(z[7]).toBeCloseTo(row?.z_of_3p260 ?? Number.NaN, 2);
    expect(outlierIndexes).toEqual([7]);
  });

  it('covers the five cases of median, MAD and z with a published figure', () => {
    expect(fixture.cases.map(({ id }) => id)).toEqual([
      'mad-1to9',
      'mad-const',
      'modified-z',
      'modified-z-table-1',
      'modified-z-table-5',
    ]);
    // 3, 5, 7 has median 5 and MAD 2, and so has 3, 3, 5, 7, 10, whose last value is the printed 10.
    expect(zOf([3, 3, 5, 7, 10]).z[4]).toBeCloseTo(1.69, 2);
    expect(zOf([10, 12, 12, 13, 12, 11, 14, 300]).z[0]).toBeCloseTo(-1.349, 4);
    expect(zOf([10, 12, 12, 13, 12, 11, 14, 300]).z[4]).toBe(0);
  });

  it('sets a value apart just over 3.5 and not just under', () => {
    // Median 0 and MAD 1, so z = 0.6745 · x: 3.49998 and 3.50005.
    expect(zOf([-2, -1, 0, 1, 5.189]).outlierIndexes).toEqual([]);
    expect(zOf([-2, -1, 0, 1, 5.1891]).outlierIndexes).toEqual([4]);
  });

  it('cannot tell at a MAD of 0, nor at one made of representation noise', () => {
    expect(robustZ([3.3, 3.3, 3.3, 3.3, 3.26])).toEqual({ ok: false, because: 'madZero' });
    expect(robustZ([0.1 + 0.2, 0.3, 0.3, 0.1 + 0.2])).toEqual({ ok: false, because: 'madZero' });
  });
});
