import { requirePositive } from './rated-energy.ts';
import { requireNotNegative } from './require-not-negative.ts';

/**
 * Delivered charge as a share of what the nameplate promises; above 1 when it gave more.
 *
 * Units   Ah in; 0–1 and above out.
 * Throws  RangeError if the delivered charge is negative or the promised one not positive.
 * Source  definition
 * Check   tests/calc/share-of-nameplate.test.ts
 */
export function chargeShareFrac({ chargeAh, ratedCapacityAh }: { chargeAh: number; ratedCapacityAh: number }): number {
  requireNotNegative('chargeShareFrac: chargeAh', chargeAh);
  requirePositive('chargeShareFrac: ratedCapacityAh', ratedCapacityAh);
  return chargeAh / ratedCapacityAh;
}

/**
 * Delivered energy as a share of what the nameplate promises (promised-energy.ts); above 1 when it gave more.
 *
 * Units   Wh in; 0–1 and above out.
 * Throws  RangeError if the delivered energy is negative or the promised one not positive.
 * Source  definition
 * Check   tests/calc/share-of-nameplate.test.ts
 */
export function energyShareFrac({ energyWh, promisedWh }: { energyWh: number; promisedWh: number }): number {
  requireNotNegative('energyShareFrac: energyWh', energyWh);
  requirePositive('energyShareFrac: promisedWh', promisedWh);
  return energyWh / promisedWh;
}
