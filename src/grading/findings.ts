import { RISK_RANKS } from './core.ts';
import type { Finding } from './grading.ts';
import { isFinding, itemRisk } from './item-risk.ts';
import { mayNotApply } from './outcome-set.ts';
import type { ItemOutcomes } from './outcomes.ts';

/**
 * The items found weak or failed, worst risk first, then definition order. One whose fact is open is listed as not
 * sure; an item nobody graded is no finding, however bad it may still turn out.
 */
export function findingsOf(outcomes: readonly ItemOutcomes[], lostPoints: readonly number[]): Finding[] {
  const found = outcomes.flatMap(({ item, grade, set }, place): Finding[] => {
    if (grade === null || !isFinding(grade)) return [];
    const risk = itemRisk(item, grade);
    return [
      {
        itemId: item.id,
        zoneId: item.zone,
        grade,
        sure: !mayNotApply(set),
        hazardId: risk?.hazardId ?? null,
        severity: risk?.severity ?? null,
        likelihood: risk?.likelihood ?? null,
        risk: risk?.risk ?? null,
        lostPoints: lostPoints[place]!,
      },
    ];
  });
  return found.toSorted((one, other) => RISK_RANKS.indexOf(other.risk) - RISK_RANKS.indexOf(one.risk));
}
