import type { Checklist } from '../schema/checklist.ts';
import { GRADES } from '../schema/grade.ts';
import type { ZoneResult } from './grading.ts';
import { isSettled, mayApply } from './outcome-set.ts';
import type { ItemOutcomes } from './outcomes.ts';
import type { Standing } from './standing.ts';

/** Each zone's share of Build and how far it is, in definition order. */
export function zonesOf(definition: Checklist, outcomes: readonly ItemOutcomes[], standing: Standing): ZoneResult[] {
  return definition.zones.map(({ id: zoneId, weight }, zone) => {
    const asked = outcomes.filter(({ item, because }) => item.zone === zoneId && because !== 'notAsked');
    const itemWeight = standing.zoneItemWeight[zone]!;
    const q = (credit: number[]) => credit[zone]! / itemWeight;
    return {
      zoneId,
      weightFrac: itemWeight > 0 ? weight / standing.liveZoneWeight : 0,
      q: itemWeight > 0 ? { low: q(standing.low.zoneCredit), high: q(standing.high.zoneCredit) } : null,
      askedCount: asked.length,
      settledCount: asked.filter(({ set }) => isSettled(set)).length,
      worst: GRADES.findLast((grade) => asked.some((outcome) => outcome.grade === grade)) ?? null,
    };
  });
}

/**
 * How much of Build is settled: Σ W·(w settled / w not surely inapplicable), 0–1. With nothing left that may apply it
 * is 1: nothing is open.
 *
 * Source  DESIGN §5, "Range"
 */
export function settledShareFrac(definition: Checklist, outcomes: readonly ItemOutcomes[], standing: Standing): number {
  if (standing.liveZoneWeight === 0) return 1;
  const settledWeight = definition.zones.map(({ id }, zone) => {
    const itemWeight = standing.zoneItemWeight[zone]!;
    const settled = outcomes.filter(({ item, set }) => item.zone === id && mayApply(set) && isSettled(set));
    const sum = settled.reduce((total, { item }) => total + item.weight, 0);
    return itemWeight > 0 ? sum / itemWeight : 0;
  });
  const weighted = definition.zones.reduce((total, { weight }, zone) => total + weight * settledWeight[zone]!, 0);
  return weighted / standing.liveZoneWeight;
}
