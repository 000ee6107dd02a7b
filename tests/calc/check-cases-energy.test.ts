import { expect, it } from 'vitest';
import { ratedEnergyWh } from '../../src/calc/rated-energy.ts';
import { specificEnergyWhPerKg } from '../../src/calc/specific-energy.ts';

// Closed forms; 3.2 V is the nominal voltage of a printed LFP cell data sheet (tables/lfp-plausibility.ts).
it.each([
  [4, 280, 3584],
  [16, 100, 5120],
])('rates %d cells of 3.2 V and %d Ah at %d Wh', (cellsInSeries, ratedCapacityAh, energyWh) => {
  expect(ratedEnergyWh({ ratedCapacityAh, nominalVoltageV: cellsInSeries * 3.2 })).toBeCloseTo(energyWh, 9);
});

it('gives 2560/23 = 111.30 Wh/kg for 5120 Wh in 46 kg (closed form)', () => {
  expect(specificEnergyWhPerKg({ energyWh: 5120, massKg: 46 })).toBeCloseTo(2560 / 23, 12);
});
