import { describe, expect, it } from 'vitest';
import { nameplateChecks } from '../../src/calc/nameplate-checks.ts';
import { promisedEnergy } from '../../src/calc/promised-energy.ts';
import { ratedEnergyWh } from '../../src/calc/rated-energy.ts';
import { energyDensityWhPerL, specificEnergyWhPerKg } from '../../src/calc/specific-energy.ts';

const codes = (figures: Parameters<typeof nameplateChecks>[0]) =>
  nameplateChecks(Object.freeze(figures)).map((check) => check.code);

it('rates 100 Ah at 25.6 V at 2560 Wh', () => {
  expect(ratedEnergyWh({ ratedCapacityAh: 100, nominalVoltageV: 25.6 })).toBeCloseTo(2560, 9);
  expect(() => ratedEnergyWh({ ratedCapacityAh: 0, nominalVoltageV: 25.6 })).toThrow(RangeError);
});

// 202 Ah prismatic cell data sheet (Rev 0, 2020): 3.2 V, 3.95 kg, type code 54 × 173 × 207 mm.
it('gives 163.6 Wh/kg and 334 Wh/L for the 202 Ah cell of a printed data sheet', () => {
  const energyWh = 202 * 3.2;
  expect(specificEnergyWhPerKg({ energyWh, massKg: 3.95 })).toBeCloseTo(163.6, 1);
  expect(energyDensityWhPerL({ energyWh, lengthMm: 54, widthMm: 173, heightMm: 207 })).toBeCloseTo(334, 0);
});

it('promises the printed Wh before Ah × V, and nothing when neither can be had', () => {
  expect(promisedEnergy({ ratedEnergyWh: 2400, ratedCapacityAh: 100, nominalVoltageV: 25.6 })).toEqual({
    energyWh: 2400,
    from: 'claimed',
  });
  expect(promisedEnergy({ ratedCapacityAh: 100, nominalVoltageV: 12.8 })).toEqual({ energyWh: 1280, from: 'computed' });
  expect(promisedEnergy({ ratedCapacityAh: 100 })).toBeNull();
});

it('has nothing to say of a typical 25.6 V 100 Ah pack of 8 cells, 24 kg', () => {
  expect(
    codes({
      nominalVoltageV: 25.6,
      ratedCapacityAh: 100,
      ratedEnergyWh: 2560,
      cellsInSeries: 8,
      continuousCurrentA: 100,
      peakCurrentA: 200,
      chargeVoltageV: 29.2,
      cutOffVoltageV: 20,
      chargeLowestDegC: 0,
      chargeHighestDegC: 45,
      claimedMassKg: 23.5,
      massKg: 24,
      lengthMm: 521,
      widthMm: 238,
      heightMm: 218,
    }),
  ).toEqual([]);
});

it('has nothing to say of an empty nameplate', () => {
  expect(codes({})).toEqual([]);
});

describe('each threshold, on it, and just past it', () => {
  it.each([
    ['energy off by 2 %', { nominalVoltageV: 10, ratedCapacityAh: 100, ratedEnergyWh: 1020 }, []],
    ['energy off by 2.1 %', { nominalVoltageV: 10, ratedCapacityAh: 100, ratedEnergyWh: 1021 }, ['energyDisagrees']],
    ['energy short by 2.1 %', { nominalVoltageV: 10, ratedCapacityAh: 100, ratedEnergyWh: 979 }, ['energyDisagrees']],
    ['120 Wh/kg', { ratedEnergyWh: 1200, massKg: 10 }, []],
    ['120.1 Wh/kg', { ratedEnergyWh: 1201, massKg: 10 }, ['specificEnergyAbovePack']],
    ['163.7 Wh/kg', { ratedEnergyWh: 1637, massKg: 10 }, ['specificEnergyAboveCell']],
    ['90 Wh/kg', { ratedEnergyWh: 900, massKg: 10 }, []],
    ['89.9 Wh/kg', { ratedEnergyWh: 899, massKg: 10 }, ['specificEnergyBelowPack']],
    ['334 Wh/L', { ratedEnergyWh: 334, lengthMm: 100, widthMm: 100, heightMm: 100 }, []],
    ['335 Wh/L', { ratedEnergyWh: 335, lengthMm: 100, widthMm: 100, heightMm: 100 }, ['energyDensityAboveCell']],
    ['mass off by 4.9 %', { claimedMassKg: 10, massKg: 10.49 }, []],
    ['mass off by 5.1 %', { claimedMassKg: 10, massKg: 10.51 }, ['massDisagrees']],
    ['3.3 V a cell', { nominalVoltageV: 13.2, cellsInSeries: 4 }, []],
    ['24 V on 8 cells', { nominalVoltageV: 24, cellsInSeries: 8 }, ['voltageNotCells']],
    ['14.6 V on 4 cells', { chargeVoltageV: 14.6, cellsInSeries: 4 }, []],
    ['14.8 V on 4 cells', { chargeVoltageV: 14.8, cellsInSeries: 4 }, ['chargeVoltageAboveCell']],
    ['10 V on 4 cells', { cutOffVoltageV: 10, cellsInSeries: 4 }, []],
    ['9.9 V on 4 cells', { cutOffVoltageV: 9.9, cellsInSeries: 4 }, ['cutOffBelowCell']],
    ['charge from 0 °C', { chargeLowestDegC: 0 }, []],
    ['charge from −0.1 °C', { chargeLowestDegC: -0.1 }, ['chargeBelowFreezing']],
    ['1 C', { continuousCurrentA: 100, ratedCapacityAh: 100 }, []],
    ['1.01 C', { continuousCurrentA: 101, ratedCapacityAh: 100 }, ['continuousAboveOneC']],
    ['peak = continuous', { peakCurrentA: 100, continuousCurrentA: 100 }, []],
    ['peak below', { peakCurrentA: 99, continuousCurrentA: 100 }, ['peakBelowContinuous']],
    ['swapped', { dischargeLowestDegC: 60, dischargeHighestDegC: -20 }, ['temperaturesSwapped']],
  ])('%s', (_name, figures, expected) => {
    expect(codes(figures)).toEqual(expected);
  });
});
