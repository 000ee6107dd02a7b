import { requirePositive } from './rated-energy.ts';

/**
 * Price of one kilowatt-hour of storage.
 *
 * Units   a currency, Wh in; that currency per kWh out.
 * Throws  RangeError if the price is negative or not finite, or the energy is not positive.
 * Source  definition
 * Check   tests/calc/price-per-kwh.test.ts
 */
export function pricePerKwh({ price, energyWh }: { price: number; energyWh: number }): number {
  if (!(price >= 0 && Number.isFinite(price))) {
    throw new RangeError(`pricePerKwh: price must be 0 or more, got ${price}`);
  }
  requirePositive('pricePerKwh: energyWh', energyWh);
  return price / (energyWh / 1000);
}
