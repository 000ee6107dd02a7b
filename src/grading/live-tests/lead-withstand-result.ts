import { leadSharing } from '../../calc/lead-sharing.ts';
import { leadWithstandS } from '../../calc/lead-withstand.ts';
import { ADIABATIC_METALS } from '../../calc/tables/adiabatic-k.ts';
import type { Tested } from '../judged.ts';
import { leadArea } from './lead-area.ts';
import type { WithstandResult } from './results.ts';

type TestedLead = Tested['tests']['leads'][number];

/**
 * How long a cable stands a current of the pack, by the least area it may have. Null for a bar, without a section,
 * without knowing the insulation, or without a temperature to start from. A cable whose metal was not noted is copper.
 */
export function leadWithstand(lead: TestedLead, currentA: number): WithstandResult | null {
  const { metal = 'copper', insulation } = lead;
  const { areaMm2 } = leadArea(lead);
  const start = startOf(lead);
  if (lead.form === 'bar' || areaMm2 === null || insulation === undefined || start === null) return null;
  if (areaMm2.low <= 0 || (metal !== 'copper' && metal !== 'aluminium')) return null;
  if (start.startDegC <= -ADIABATIC_METALS[metal].betaDegC) return null;
  const eachA = currentA / leadSharing(lead).sharing;
  const stands = leadWithstandS({
    areaMm2: areaMm2.low,
    currentA: eachA,
    metal,
    insulation,
    startDegC: start.startDegC,
  });
  return { leadId: lead.id, currentA, eachA, ...start, ...stands };
}

/** As if it had carried all it may: IEC 60364-4-43 takes the highest working temperature. Else as cold as around it. */
function startOf({ insulationDegC, aroundDegC }: TestedLead): Pick<WithstandResult, 'startDegC' | 'startFrom'> | null {
  if (insulationDegC !== undefined) return { startDegC: insulationDegC, startFrom: 'insulationMark' };
  return aroundDegC === undefined ? null : { startDegC: aroundDegC, startFrom: 'surroundings' };
}

/** The highest current of any trip, whether it opened or not; null without one. */
export function highestCarriedA({ tests }: Tested): number | null {
  return tests.trips.length === 0 ? null : Math.max(...tests.trips.map(({ currentA }) => currentA));
}
