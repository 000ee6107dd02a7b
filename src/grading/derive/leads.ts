import { leadResults, mainLeadsAllowableA } from '../live-tests/lead-result.ts';
import type { Derivation } from './derivation.ts';
import { between, exactly, type Reading } from './figure.ts';

/** Allowable current of the main leads in percent of the continuous claim. */
export const mainLeads: Derivation = ({ tests, nameplate }) => {
  const claimA = nameplate.continuousCurrentA;
  const allowable = mainLeadsAllowableA({ tests, nameplate });
  if (claimA === undefined || allowable === null) return null;
  const figure = between((allowable.low / claimA) * 100, (allowable.high / claimA) * 100);
  return { alternatives: [[{ case: 'any', figure }]] };
};

/** A per mm² in each cell link at the continuous claim; the worst counts. */
export const links: Derivation = ({ tests, nameplate }) => {
  const readings = leadResults({ tests, nameplate }).flatMap(({ lead, densityAPerMm2 }): Reading[] => {
    if (lead.place !== 'link' || lead.metal === undefined) return [];
    if (lead.metal !== 'copper' && lead.metal !== 'aluminium') return [{ case: 'other' }];
    return densityAPerMm2 === null ? [] : [{ case: lead.metal, figure: exactly(densityAPerMm2) }];
  });
  return readings.length === 0 ? null : { alternatives: [readings] };
};
