import { expect, it } from 'vitest';
import { deliveredCostPerKwh } from '../../src/calc/delivered-cost.ts';

// Common practice, no source; by hand 400 ÷ (292.2 · 12.8 ÷ 1000) = 106.947.
it('makes 106.95 per kWh of 400 for 292.2 Ah at 12.8 V, resting on nominal voltage', () => {
  const cost = deliveredCostPerKwh(Object.freeze({ price: 400, chargeAh: 292.2, nominalVoltageV: 12.8 }));
  expect(cost?.basis).toBe('nominalVoltage');
  expect(cost?.costPerKwh).toBeCloseTo(106.95, 2);
});

it('takes measured energy before Ah × V: 200 per kWh of 500 for 2500 Wh (closed form)', () => {
  expect(deliveredCostPerKwh({ price: 500, energyWh: 2500, chargeAh: 100, nominalVoltageV: 12.8 })).toEqual({
    costPerKwh: 200,
    basis: 'measured',
  });
});

// 3.584 kWh of 280 Ah at 12.8 V, 5.12 kWh of 100 Ah at 51.2 V: closed form, Ah · V.
it('makes 100 per kWh of 358.40 for 280 Ah at 12.8 V and of 512 for 100 Ah at 51.2 V', () => {
  expect(deliveredCostPerKwh({ price: 358.4, chargeAh: 280, nominalVoltageV: 12.8 })?.costPerKwh).toBeCloseTo(100, 10);
  expect(deliveredCostPerKwh({ price: 512, chargeAh: 100, nominalVoltageV: 51.2 })?.costPerKwh).toBeCloseTo(100, 10);
});

it('adds what the remedies cost: 240 per kWh of 500 + 100 for 2500 Wh', () => {
  expect(deliveredCostPerKwh({ price: 500, remedyPrice: 100, energyWh: 2500 })?.costPerKwh).toBe(240);
  expect(deliveredCostPerKwh({ price: 0, remedyPrice: 100, energyWh: 2500 })?.costPerKwh).toBe(40);
});

it.each([
  ['nothing delivered is known', { price: 400 }],
  ['Ah without nominal voltage', { price: 400, chargeAh: 292.2 }],
  ['nominal voltage without Ah', { price: 400, nominalVoltageV: 12.8 }],
  ['energy and charge are null', { price: 400, energyWh: null, chargeAh: null, nominalVoltageV: 12.8 }],
])('knows no cost where %s', (_name, delivered) => {
  expect(deliveredCostPerKwh(delivered)).toBeNull();
});

it.each([
  ['price must be 0 or more, got -1', { price: -1, energyWh: 2500 }],
  ['price must be 0 or more, got NaN', { price: Number.NaN }],
  ['remedyPrice must be 0 or more, got -5', { price: 1, remedyPrice: -5, energyWh: 2500 }],
  ['energyWh must be positive, got 0', { price: 1, energyWh: 0 }],
  ['nominalVoltageV must be positive, got 0', { price: 1, chargeAh: 100, nominalVoltageV: 0 }],
])('refuses bad input: %s', (message, delivered) => {
  expect(() => deliveredCostPerKwh(delivered)).toThrow(message);
  expect(() => deliveredCostPerKwh(delivered)).toThrow(RangeError);
});
