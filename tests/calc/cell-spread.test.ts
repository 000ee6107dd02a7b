import { describe, expect, it } from 'vitest';
import { cellSpreadMv } from '../../src/calc/cell-spread.ts';

describe('cellSpreadMv', () => {
  it('finds 3.260 V, 3.303 V and 43 mV among eight cells, in any order', () => {
    const voltagesV = Object.freeze([3.301, 3.302, 3.299, 3.3, 3.303, 3.298, 3.301, 3.26]);
    expect(cellSpreadMv(voltagesV)).toEqual({ lowV: 3.26, highV: 3.303, spreadMv: 43 });
    expect(cellSpreadMv(voltagesV.toReversed()).spreadMv).toBe(43);
  });

  it('gives 10 mV and not a hair more for every 10 mV step from 2.000 to 3.990 V', () => {
    for (let step = 200; step < 400; step++) {
      expect(cellSpreadMv([step / 100, (step + 1) / 100]).spreadMv).toBe(10);
    }
  });

  it('keeps a tenth of a microvolt and counts a reversed cell from below zero: 3310 mV', () => {
    expect(cellSpreadMv([3.3, 3.3000001]).spreadMv).toBeCloseTo(0.0001, 9);
    expect(cellSpreadMv([-0.01, 3.3]).spreadMv).toBe(3310);
    expect(cellSpreadMv([3.3, 3.3]).spreadMv).toBe(0);
  });

  it.each([
    ['one cell', [3.3]],
    ['none', []],
    ['not finite', [3.3, Number.NaN]],
  ])('refuses bad input: %s', (_name, cells) => {
    expect(() => cellSpreadMv(cells)).toThrow(RangeError);
  });
});
