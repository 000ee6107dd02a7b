import { deliveredCostPerKwh } from '../../calc/delivered-cost.ts';
import { costUncertaintyPerKwh } from '../../calc/meter-uncertainty.ts';
import type { Nameplate } from '../../schema/nameplate.ts';
import type { CostResult, GentleCapacity } from './results.ts';

/** What a delivered kilowatt-hour cost; null without a price, or where neither energy nor nominal voltage is known. */
export function costResult(gentle: GentleCapacity, nameplate: Nameplate): CostResult | null {
  const { price, nominalVoltageV } = nameplate;
  if (price === undefined) return null;
  const { chargeAh, energyWh } = gentle;
  const cost = deliveredCostPerKwh({ price, energyWh, chargeAh, nominalVoltageV });
  if (cost === null) return null;
  return {
    perKwh: cost.costPerKwh,
    basis: cost.basis,
    price,
    currency: nameplate.currency ?? null,
    pricedOn: nameplate.pricedOn ?? null,
    chargeAh,
    energyWh,
    nominalVoltageV: nominalVoltageV ?? null,
    uncertaintyPerKwh: uncertaintyPerKwh(cost.costPerKwh, gentle, nominalVoltageV),
  };
}

/** The price is exact, and so is the nominal voltage where the cost rests on it. */
function uncertaintyPerKwh(
  costPerKwh: number,
  { chargeAh, energyWh, chargeUncertaintyAh, energyUncertaintyWh }: GentleCapacity,
  nominalVoltageV: number | undefined,
): number | null {
  if (energyWh !== null) {
    return energyUncertaintyWh === null ? null : costUncertaintyPerKwh({ costPerKwh, energyWh, energyUncertaintyWh });
  }
  if (nominalVoltageV === undefined || chargeUncertaintyAh === null) return null;
  return costUncertaintyPerKwh({
    costPerKwh,
    energyWh: chargeAh * nominalVoltageV,
    energyUncertaintyWh: chargeUncertaintyAh * nominalVoltageV,
  });
}
