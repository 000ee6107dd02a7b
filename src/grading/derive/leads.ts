import { isMainCable, leadResults } from '../live-tests/lead-result.ts';
import type { LeadResult } from '../live-tests/results.ts';
import type { Derivation } from './derivation.ts';
import { between, type Reading } from './figure.ts';

/**
 * Allowable current of the main leads in percent of the continuous claim. All of them carry the whole current, so the
 * weakest counts; one that cannot be told may be weaker than all that can.
 */
export const mainLeads: Derivation = ({ tests, nameplate }) => {
  const claimA = nameplate.continuousCurrentA;
  if (claimA === undefined) return null;
  const cables = leadResults({ tests, nameplate }).filter(isMainCable);
  const readings = cables.flatMap(({ allowable }): Reading[] =>
    allowable === null
      ? []
      : [{ case: 'any', figure: between((allowable.lowA / claimA) * 100, (allowable.highA / claimA) * 100) }],
  );
  if (readings.length === 0) return null;
  return { alternatives: [readings], ...(readings.length < cables.length ? { orWorse: true } : {}) };
};

/**
 * A per mm² in each cell link at the continuous claim; the worst counts. A link that was noted but cannot be told, its
 * metal or section unknown, may be worse than all that can; so may one of brass, of which no grade says anything.
 */
export const links: Derivation = ({ tests, nameplate }) => {
  const all = leadResults({ tests, nameplate }).filter(({ lead }) => lead.place === 'link');
  const readings = all.flatMap((link) => readingOf(link) ?? []);
  if (readings.length === 0) return null;
  return { alternatives: [readings], ...(readings.length < all.length ? { orWorse: true } : {}) };
};

function readingOf({ lead: { metal }, areaMm2, densityAPerMm2 }: LeadResult): Reading | null {
  if (metal === 'nickel' || metal === 'steel') return { case: 'other' };
  if (metal !== 'copper' && metal !== 'aluminium') return null;
  if (areaMm2 === null || densityAPerMm2 === null) return null;
  // The density is told at the best area: more metal carries less in each mm².
  const atMm2 = (mm2: number) => densityAPerMm2 * (areaMm2.best / mm2);
  return { case: metal, figure: between(atMm2(areaMm2.high), atMm2(areaMm2.low)) };
}
