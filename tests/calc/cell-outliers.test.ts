import { describe, expect, it } from 'vitest';
import { cellOutliers } from '../../src/calc/cell-outliers.ts';

const apart = (readings: readonly number[]) => {
  const found = cellOutliers(Object.freeze([...readings]));
  return found.ok ? found.apartIndexes : found.because;
};

describe('cellOutliers', () => {
  it('sets the eighth of eight cells apart, at 3.260 V, by both tests', () => {
    const found = cellOutliers([3.301, 3.302, 3.299, 3.3, 3.303, 3.298, 3.301, 3.26]);
    if (!found.ok) throw new Error(found.because);
    expect(found.robustZ.outlierIndexes).toEqual([7]);
    expect(found.grubbs).toMatchObject({ index: 7, outlier: true });
    expect(found.apartIndexes).toEqual([7]);
  });

  it('sees two low cells that hide each other from Grubbs: the third and the seventh', () => {
    const found = cellOutliers([3.301, 3.302, 3.26, 3.3, 3.303, 3.298, 3.261, 3.3]);
    if (!found.ok) throw new Error(found.because);
    expect(found.grubbs.outlier).toBe(false);
    expect(found.apartIndexes).toEqual([2, 6]);
  });

  it('sees by Grubbs alone a cell 4.5 mV over the mean of two groups that widen the MAD: G = 2.444 over 2.290', () => {
    const found = cellOutliers([-1, -1, -1, -1, 0, 1, 1, 1, 1, 5].map((offMv) => (3300 + offMv) / 1000));
    if (!found.ok) throw new Error(found.because);
    expect(found.robustZ.outlierIndexes).toEqual([]);
    expect(found.grubbs.g).toBeCloseTo(4.5 / Math.sqrt(30.5 / 9), 6);
    expect(found.grubbs.criticalG).toBeCloseTo(2.29, 3);
    expect(found.apartIndexes).toEqual([9]);
  });

  it('sets none of eight evenly scattered cells apart', () => {
    expect(apart([3.297, 3.298, 3.299, 3.3, 3.301, 3.302, 3.303, 3.304])).toEqual([]);
  });

  it('gives nothing from five cells, and a result from six', () => {
    expect(apart([3.3, 3.301, 3.302, 3.303, 3.2])).toBe('fewerThanSix');
    expect(apart([3.3, 3.301, 3.302, 3.303, 3.304, 3.2])).toEqual([5]);
  });

  it('cannot tell when the meter shows the same for most cells, or for all', () => {
    expect(apart([3.3, 3.3, 3.3, 3.3, 3.3, 3.3, 3.3, 3.299])).toBe('madZero');
    expect(apart([3.3, 3.3, 3.3, 3.3, 3.3, 3.3])).toBe('noSpread');
  });
});
