import { busBarAreaMm2 } from '../../calc/bus-bar-area.ts';
import { conductorFromPhoto, type SeenConductor } from '../../calc/conductor-from-photo.ts';
import { awgGauge } from '../../calc/tables/awg.ts';
import type { Lead } from '../../schema/live-tests/lead.ts';
import type { AreaRefused, Range } from './results.ts';

export type LeadArea = { areaMm2: Range; areaRefused: null } | { areaMm2: null; areaRefused: AreaRefused };

/**
 * Metal area of one conductor of a lead; of a bar with all its layers. A size printed on it needs no word on how it is
 * known; a diameter does, because over insulation it gives none.
 */
export function leadArea(lead: Lead): LeadArea {
  return lead.form === 'bar' ? barArea(lead) : cableArea(lead);
}

/** An entry is one bar unless it says that there are layers. */
function barArea({ widthMm, thicknessMm, layers = 1, byPhoto }: Lead): LeadArea {
  if (widthMm === undefined || thicknessMm === undefined) return refused('nothingMeasured');
  // A photo may be so unsure that nothing at all lies within its limits.
  const areaMm2 = (mm: number) => (mm > 0 ? busBarAreaMm2({ widthMm: mm, thicknessMm, layers }) : 0);
  const plusMinusMm = plusMinusOf(widthMm, byPhoto);
  const low = areaMm2(widthMm - plusMinusMm);
  return { areaMm2: { low, best: areaMm2(widthMm), high: areaMm2(widthMm + plusMinusMm) }, areaRefused: null };
}

/** How sure a size from a photo is. One typed over since, or measured otherwise, counts as it stands. */
function plusMinusOf(sizeMm: number, byPhoto: Lead['byPhoto']): number {
  return byPhoto?.mm === sizeMm ? byPhoto.plusMinusMm : 0;
}

function cableArea(lead: Lead): LeadArea {
  const seen = seenConductor(lead);
  if (typeof seen === 'string') return refused(seen);
  const found = conductorFromPhoto(seen);
  if (!found.ok) return refused(found.because);
  return { areaMm2: { low: found.leastMm2, best: found.areaMm2, high: found.mostMm2 }, areaRefused: null };
}

function seenConductor(lead: Lead): SeenConductor | AreaRefused {
  const { diameterMm } = lead;
  switch (lead.way) {
    case 'printed':
      return printedSize(lead) ?? 'nothingMeasured';
    case 'bareStrands':
      return diameterMm === undefined
        ? 'nothingMeasured'
        : { way: 'bareStrands', diameterMm, diameterUncertaintyMm: plusMinusOf(diameterMm, lead.byPhoto) };
    case 'overInsulation':
      return 'overInsulation';
    case undefined:
      return printedSize(lead) ?? (diameterMm === undefined ? 'nothingMeasured' : 'wayNotSaid');
  }
}

/** Of two printed sizes the metric one: it is the area itself. */
function printedSize({ printedMm2, printedAwg }: Lead): SeenConductor | null {
  if (printedMm2 !== undefined) return { way: 'printed', printedMm2 };
  // The table of names ends at 30; thinner sizes are their own number.
  if (printedAwg !== undefined) return { way: 'printed', gauge: awgGauge(printedAwg) ?? Number(printedAwg) };
  return null;
}

function refused(areaRefused: AreaRefused): LeadArea {
  return { areaMm2: null, areaRefused };
}
