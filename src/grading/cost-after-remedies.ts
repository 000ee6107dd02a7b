import { deliveredCostPerKwh } from '../calc/delivered-cost.ts';
import type { PackRecord } from '../record/pack-record.ts';
import type { Checklist } from '../schema/checklist.ts';
import type { Grading } from './grading.ts';
import { capacityResult } from './live-tests/capacity-result.ts';
import type { CostResult } from './live-tests/results.ts';
import { type RemedyCost, remedyCosts } from './remedy-costs.ts';

export interface CostAfter extends RemedyCost {
  /** With what the counted remedies cost; null where none is counted, or what the pack delivers is not known. */
  perKwh: number | null;
}

/**
 * What a delivered kilowatt-hour costs once the listed remedies are paid for: those from outside, and all of them.
 *
 * Units   the nameplate's currency, and that per kWh
 * Error   too low by what is needed of `unpricedIds` and `otherCurrencyIds`, too high by what is not of `unsureIds`
 * Throws  RangeError as deliveredCostPerKwh and remedyCosts do.
 * Check   tests/grading/cost-after-remedies.test.ts
 */
export function costAfterRemedies(
  record: Pick<PackRecord, 'nameplate' | 'remedyNotes' | 'tests'>,
  definition: Pick<Checklist, 'remedies'>,
  grading: Pick<Grading, 'remedies' | 'items'>,
): { asFound: CostResult | null; outside: CostAfter; all: CostAfter } {
  const { outside, all } = remedyCosts({ record, definition, grading, currency: record.nameplate.currency ?? null });
  const asFound = capacityResult(record).cost;
  return { asFound, outside: withPerKwh(asFound, outside), all: withPerKwh(asFound, all) };
}

function withPerKwh(asFound: CostResult | null, cost: RemedyCost): CostAfter {
  if (asFound === null || cost.price === null) return { ...cost, perKwh: null };
  const { price, energyWh, chargeAh, nominalVoltageV } = asFound;
  const delivered = { price, remedyPrice: cost.price, energyWh, chargeAh };
  const after = deliveredCostPerKwh({ ...delivered, ...(nominalVoltageV !== null && { nominalVoltageV }) });
  return { ...cost, perKwh: after?.costPerKwh ?? null };
}
