import type { HazardResult } from '../../grading/grading.ts';
import type { RiskLevel } from '../../schema/checklist.ts';
import { ownerWords as say } from '../../text/owner.ts';
import type { FitList } from './owner-fit.ts';
import type { Found } from './owner-found.ts';
import type { SheetContext } from './sheet-context.ts';

const RISK_ORDER: readonly (RiskLevel | null)[] = ['high', 'serious', 'medium', 'low', null];

/** Ways to come to harm, the found ones first, worst first; then what may still turn out. The page gives way to the first. */
export function hurts(
  { grading, hazardOf }: SheetContext,
  found: readonly Found[],
): Pick<FitList, 'items' | 'firstCount'> {
  const levels = new Map(grading.hazards.map((hazard) => [hazard.hazardId, foundLevel(hazard, found)]));
  const levelOf = ({ hazardId }: HazardResult) => levels.get(hazardId) ?? null;
  const rank = (risk: RiskLevel | null) => RISK_ORDER.indexOf(risk);
  const listed = grading.hazards
    .filter(({ risk }) => risk.low !== null)
    .sort((a, b) => rank(levelOf(a)) - rank(levelOf(b)) || rank(a.risk.low) - rank(b.risk.low));
  return {
    items: listed.map((hazard) => {
      const { title, harm } = hazardOf(hazard.hazardId);
      return { text: say.hazard({ title, harm, risk: riskWords(hazard, levelOf(hazard)) }) };
    }),
    firstCount: listed.filter((hazard) => levelOf(hazard) !== null).length,
  };
}

/** The worst risk that was found of a hazard; null where nothing was. */
function foundLevel({ hazardId }: HazardResult, found: readonly Found[]): RiskLevel | null {
  const risks = found.flatMap(({ item, risk }) => (item.hazard === hazardId && risk !== null ? [risk] : []));
  return RISK_ORDER.find((level) => level !== null && risks.includes(level)) ?? null;
}

function riskWords({ risk }: HazardResult, found: RiskLevel | null): string {
  const { low, high } = risk;
  if (low === null) return '';
  if (low === high) return say.risk(low);
  if (found === null || found === low) return say.riskUpTo(low);
  return say.riskFoundUpTo(found, low);
}
