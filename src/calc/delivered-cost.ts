import { pricePerKwh } from './price-per-kwh.ts';
import { ratedEnergyWh } from './rated-energy.ts';
import { requireNotNegative } from './require-not-negative.ts';

/** What was paid and what came out (capacity-near-rate.ts). Prices in one currency. */
export interface Delivered {
  price: number;
  /** What putting it right costs on top. */
  remedyPrice?: number | undefined;
  energyWh?: number | null | undefined;
  chargeAh?: number | null | undefined;
  nominalVoltageV?: number | undefined;
}

export interface DeliveredCost {
  costPerKwh: number;
  /** `measured` energy; or charge × `nominalVoltage`, which the reader must be told. */
  basis: 'measured' | 'nominalVoltage';
}

/**
 * Price of one kilowatt-hour that the pack really delivered in one run-down, with remedies if given.
 *
 * Shape   measured energy is taken before charge × nominal voltage; null when neither can be had.
 * Units   a currency, Wh, Ah, V in; that currency per kWh out.
 * Throws  RangeError if a price is negative, or an energy, charge or voltage that is used not positive.
 * Source  definition
 * Check   tests/calc/delivered-cost.test.ts
 */
export function deliveredCostPerKwh(delivered: Delivered): DeliveredCost | null {
  const { price, remedyPrice = 0, energyWh, chargeAh, nominalVoltageV } = delivered;
  requireNotNegative('deliveredCostPerKwh: price', price);
  requireNotNegative('deliveredCostPerKwh: remedyPrice', remedyPrice);
  const paid = price + remedyPrice;
  if (isKnown(energyWh)) return { costPerKwh: pricePerKwh({ price: paid, energyWh }), basis: 'measured' };
  if (!isKnown(chargeAh) || !isKnown(nominalVoltageV)) return null;
  const nominalWh = ratedEnergyWh({ ratedCapacityAh: chargeAh, nominalVoltageV });
  return { costPerKwh: pricePerKwh({ price: paid, energyWh: nominalWh }), basis: 'nominalVoltage' };
}

function isKnown(value: number | null | undefined): value is number {
  return value !== null && value !== undefined;
}
