import { describe, expect, it } from 'vitest';
import { energyPlausibility } from '../../src/calc/energy-plausibility.ts';

const specific = (energyWh: number, massKg: number) => energyPlausibility({ energyWh, massKg }).specific;
const box = (energyWh: number, litres: number) =>
  energyPlausibility({ energyWh, lengthMm: litres * 100, widthMm: 100, heightMm: 100 }).density;

describe('energyPlausibility', () => {
  it('finds 111.30 Wh/kg, as packs have, for 5120 Wh in 46 kg', () => {
    expect(specific(5120, 46)).toEqual({ foundWhPerKg: expect.closeTo(111.304348, 6), band: 'asPack' });
  });

  // 202 Ah prismatic cell data sheet (Rev 0, 2020): 3.2 V, 3.95 kg, type code 54 × 173 × 207 mm.
  it('does not put the cell of the data sheet, 163.6 Wh/kg and 334 Wh/L, above itself by more than its print', () => {
    const cell = { energyWh: 202 * 3.2, massKg: 3.96, lengthMm: 54, widthMm: 173, heightMm: 207.5 };
    expect(energyPlausibility(cell)).toEqual({
      specific: { foundWhPerKg: expect.closeTo(163.2, 1), band: 'abovePack' },
      density: { foundWhPerL: expect.closeTo(333.5, 0), band: 'aboveOlderCell' },
    });
  });

  it.each([
    [89.9, 'belowPack'],
    [90, 'asPack'],
    [120, 'asPack'],
    [120.1, 'abovePack'],
    [163.6, 'abovePack'],
    [163.7, 'aboveCell'],
  ] as const)('puts %d Wh/kg %s', (whPerKg, band) => {
    expect(specific(whPerKg, 1)?.band).toBe(band);
  });

  it.each([
    [140, 'belowCell'],
    [220, 'belowCell'],
    [221, 'aboveOlderCell'],
    [334, 'aboveOlderCell'],
    [335, 'aboveCell'],
  ] as const)('puts %d Wh/L %s', (whPerL, band) => {
    expect(box(whPerL, 1)?.band).toBe(band);
  });

  it('says nothing of what is not known, and refuses what cannot be', () => {
    expect(energyPlausibility({ energyWh: 1280, lengthMm: 260, widthMm: 168 })).toEqual({
      specific: null,
      density: null,
    });
    expect(() => energyPlausibility({ energyWh: 0, massKg: 10 })).toThrow(RangeError);
    expect(() => energyPlausibility({ energyWh: 1280, massKg: -1 })).toThrow(RangeError);
  });
});
