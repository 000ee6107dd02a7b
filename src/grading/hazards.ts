import type { Checklist } from '../schema/checklist.ts';
import { type Core, riskAt } from './core.ts';
import type { HazardResult } from './grading.ts';
import { mayApply, type OutcomeSet, worstRank } from './outcome-set.ts';
import type { Standing } from './standing.ts';

/** Each hazard's worst risk and factor at both ends, in definition order, with the items that bring it or still may. */
export function hazardsOf(
  definition: Checklist,
  core: Core,
  { sets, standing }: { sets: readonly OutcomeSet[]; standing: Standing },
): HazardResult[] {
  return definition.hazards.map(({ id: hazardId }, hazard) => {
    const low = standing.low.hazardRisk[hazard]!;
    const high = standing.high.hazardRisk[hazard]!;
    const bearing = definition.items.filter((_, place) => bearsRisk(core, hazard, { place, set: sets[place]! }));
    return {
      hazardId,
      risk: { low: riskAt(low), high: riskAt(high) },
      k: { low: core.k[low]!, high: core.k[high]! },
      itemIds: bearing.map(({ id }) => id),
    };
  });
}

function bearsRisk(core: Core, hazard: number, { place, set }: { place: number; set: OutcomeSet }): boolean {
  const item = core.items[place]!;
  return item.hazard === hazard && mayApply(set) && item.risk[worstRank(set)]! > 0;
}
