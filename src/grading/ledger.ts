import type { Checklist } from '../schema/checklist.ts';
import { type Core, riskAt } from './core.ts';
import type { Ledger } from './grading.ts';
import { isSettled, mayApply, mayNotApply, type OutcomeSet, worstRank } from './outcome-set.ts';
import type { Standing } from './standing.ts';

/**
 * Points of Build each item loses at the low end, by place; they sum to 100 − Build.
 *
 * Units   points, 0–100
 * Check   tests/grading/ledger.test.ts
 */
export function lostPointsOf(core: Core, sets: readonly OutcomeSet[], standing: Standing): number[] {
  return core.items.map((item, place) => {
    const set = sets[place]!;
    if (!mayApply(set)) return 0;
    const lostCredit = 1 - (mayNotApply(set) ? 0 : core.credit[worstRank(set)]!);
    const zoneShare = core.zoneWeight[item.zone]! / standing.liveZoneWeight;
    return 100 * zoneShare * ((item.weight * lostCredit) / standing.zoneItemWeight[item.zone]!);
  });
}

/**
 * Where each point went, at the low end: the items, then the hazards' factors, worst first and equal ones in
 * definition order, each as points off what those before it left. 100 minus all of it is the Score.
 *
 * Source  DESIGN §5, "Ledger"
 * Check   tests/grading/ledger.test.ts
 */
export function ledgerOf(
  definition: Checklist,
  core: Core,
  { sets, standing }: { sets: readonly OutcomeSet[]; standing: Standing },
): Ledger {
  const lines = lostPointsOf(core, sets, standing)
    .map((lostPoints, place) => ({ itemId: definition.items[place]!.id, lostPoints, open: !isSettled(sets[place]!) }))
    .filter(({ lostPoints }) => lostPoints > 0);
  return { lines, factors: factorLines(definition, core, standing) };
}

function factorLines(definition: Checklist, core: Core, { low, high }: Standing): Ledger['factors'] {
  const bearing = definition.hazards.flatMap(({ id: hazardId }, hazard) => {
    const rank = low.hazardRisk[hazard]!;
    const risk = riskAt(rank);
    const k = core.k[rank]!;
    return risk === null || k === 1 ? [] : [{ hazardId, risk, k, open: high.hazardRisk[hazard] !== rank }];
  });
  let left = low.build;
  return bearing
    .toSorted((one, other) => one.k - other.k)
    .map((line) => {
      const lostPoints = left * (1 - line.k);
      left -= lostPoints;
      return { ...line, lostPoints };
    });
}
