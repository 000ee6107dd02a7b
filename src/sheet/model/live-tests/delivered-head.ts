import { capacityResult } from '../../../grading/live-tests/capacity-result.ts';
import type { CapacityResult } from '../../../grading/live-tests/results.ts';
import type { PackRecord } from '../../../record/pack-record.ts';
import { formatPrice } from '../../../text/format-unit.ts';
import { deliveredWords as say } from '../../../text/sheet-record.ts';
import type { Figure } from '../sheet.ts';
import { costBasis } from './cost-blocks.ts';
import { deliveredFigure } from './delivered-blocks.ts';

export interface DeliveredHead {
  delivered: Figure;
  cost: Figure[];
  note: string | null;
}

/** Delivered and what a kilowatt-hour of it costs, beside what is promised; and what a reader must not take from it. */
export function deliveredHead(record: Pick<PackRecord, 'nameplate' | 'tests'>): DeliveredHead {
  const capacity = capacityOrNull(record);
  const value = deliveredFigure(capacity?.delivered ?? null);
  if (capacity === null || value === null) {
    return { delivered: { label: say.delivered, value: say.notTested }, cost: [], note: say.notTestedNote };
  }
  return {
    delivered: { label: say.delivered, value },
    cost: costFigures(capacity),
    note: capacity.delivered?.atLeast ? say.atLeastNote : null,
  };
}

function costFigures({ cost }: CapacityResult): Figure[] {
  if (cost === null) return [];
  const value = formatPrice(cost.perKwh, cost.currency ?? undefined);
  return [{ label: say.pricePerDelivered, value, note: costBasis(cost) }];
}

/** A figure so far out that a calculation refuses it is said under the live tests. */
function capacityOrNull(record: Pick<PackRecord, 'nameplate' | 'tests'>): CapacityResult | null {
  try {
    return capacityResult(record);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
