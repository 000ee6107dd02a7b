import { cableResistanceMohm } from '../../calc/cable-resistance.ts';
import { conductorResistanceMohm } from '../../calc/conductor-resistance.ts';
import { leadSharing } from '../../calc/lead-sharing.ts';
import { parallelAllowableCurrentA } from '../../calc/parallel-allowable-current.ts';
import { conductorHeatW, voltageDropMv } from '../../calc/voltage-drop.ts';
import type { Tested } from '../judged.ts';
import { leadArea } from './lead-area.ts';
import { highestCarriedA, leadWithstand } from './lead-withstand-result.ts';
import type { LeadResult, Range } from './results.ts';

type TestedLead = Tested['tests']['leads'][number];

/** Resistance is stated at this where nothing else was noted. */
const REFERENCE_DEG_C = 20;
/** Where calc/conductor-resistance.ts ends. */
const CONDUCTOR_DEG_C = { lowest: -40, highest: 250 } as const;

/** What each lead and bar comes to, in the order in which they were measured. */
export function leadResults(tested: Tested): LeadResult[] {
  const claimA = tested.nameplate.continuousCurrentA ?? null;
  const carriedA = highestCarriedA(tested);
  return tested.tests.leads.map((lead) => {
    const area = leadArea(lead);
    const { counted, sharing } = leadSharing(lead);
    const resistanceMohm = area.areaMm2 === null ? null : entryResistanceMohm(lead, area.areaMm2.best, sharing);
    const loaded = claimA === null || resistanceMohm === null ? null : { resistanceMohm, currentA: claimA };
    return {
      lead,
      ...area,
      counted,
      allowable: area.areaMm2 === null ? null : allowable(lead, area.areaMm2),
      densityAPerMm2: area.areaMm2 === null || claimA === null ? null : claimA / (area.areaMm2.best * sharing),
      resistanceMohm,
      resistanceAtDegC: lead.aroundDegC ?? REFERENCE_DEG_C,
      dropMv: loaded === null ? null : voltageDropMv(loaded),
      heatW: loaded === null ? null : conductorHeatW(loaded),
      withstand: carriedA === null ? null : leadWithstand(lead, carriedA),
    };
  });
}

/**
 * What the main leads let the pack carry for good. Each entry lies in the path of the whole current (plus, minus), those
 * in parallel being one entry, so the weakest counts. Null while one of them cannot be told, or there is none.
 */
export function mainLeadsAllowableA(tested: Tested): Range | null {
  const cables = leadResults(tested).filter(isMainCable);
  const known = cables.flatMap(({ allowable: of }) => (of === null ? [] : [of]));
  if (known.length === 0 || known.length < cables.length) return null;
  return {
    low: Math.min(...known.map(({ lowA }) => lowA)),
    best: Math.min(...known.map(({ bestA }) => bestA)),
    high: Math.min(...known.map(({ highA }) => highA)),
  };
}

export function isMainCable({ lead }: Pick<LeadResult, 'lead'>): boolean {
  return lead.place === 'main' && lead.form === 'cable';
}

/** Only of a copper cable whose insulation is marked: the table knows no other. Metal not noted on a cable is copper. */
function allowable(lead: TestedLead, areaMm2: Range): LeadResult['allowable'] {
  const { insulationDegC, aroundDegC, metal = 'copper', count, equal } = lead;
  if (lead.form === 'bar' || metal !== 'copper' || insulationDegC === undefined) return null;
  const inAir = aroundDegC === undefined ? {} : { ambientDegC: aroundDegC };
  // A photo may be so unsure that nothing at all lies within its limits.
  const allowedA = (mm2: number) =>
    mm2 > 0 ? parallelAllowableCurrentA({ areaMm2: mm2, insulationDegC, count, equal, ...inAir }) : null;
  const lowA = allowedA(areaMm2.low);
  const bestA = allowedA(areaMm2.best);
  const highA = allowedA(areaMm2.high);
  if (lowA === null || bestA === null || highA === null) return null;
  return { lowA, bestA, highA };
}

/** By the table of its printed size where there is one; the strands of a lead are finer than their area says. */
function entryResistanceMohm(lead: TestedLead, areaMm2: number, sharing: number): number | null {
  const { lengthMm, aroundDegC: tempDegC = REFERENCE_DEG_C } = lead;
  const metal = lead.metal ?? (lead.form === 'cable' ? 'copper' : null);
  if (lengthMm === undefined || metal === null || metal === 'brass') return null;
  if (tempDegC < CONDUCTOR_DEG_C.lowest || tempDegC > CONDUCTOR_DEG_C.highest) return null;
  const printed = metal === 'copper' && lead.form === 'cable' && lead.way !== 'bareStrands' ? sizeOf(lead) : null;
  const byTable = printed === null ? null : cableResistanceMohm({ size: printed, tinned: false, lengthMm, tempDegC });
  return (byTable ?? conductorResistanceMohm({ metal, areaMm2, lengthMm, tempDegC })) / sharing;
}

function sizeOf({ printedMm2, printedAwg }: TestedLead): { nominalMm2: number } | { awg: string } | null {
  if (printedMm2 !== undefined) return { nominalMm2: printedMm2 };
  return printedAwg === undefined ? null : { awg: printedAwg };
}
