import { expect, it } from 'vitest';
import { pricePerKwh } from '../../src/calc/price-per-kwh.ts';

it('makes 250 per kWh of 640 for 2560 Wh (closed form)', () => {
  expect(pricePerKwh({ price: 640, energyWh: 2560 })).toBe(250);
});

it('lets a pack be a gift, but refuses a negative price and no energy', () => {
  expect(pricePerKwh({ price: 0, energyWh: 2560 })).toBe(0);
  expect(() => pricePerKwh({ price: -1, energyWh: 2560 })).toThrow(RangeError);
  expect(() => pricePerKwh({ price: 640, energyWh: 0 })).toThrow(RangeError);
});
