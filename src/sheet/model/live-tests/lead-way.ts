import type { Lead } from '../../../schema/live-tests/lead.ts';
import { formatLength, formatValue } from '../../../text/format-unit.ts';
import { leadWords as say } from '../../../text/live-tests/results/lead.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { UnitChoice } from '../../../units/unit-choice.ts';

/** How the section is known: "printed size, AWG 2", "bare strands, 8.2 mm across"; null where nothing was noted. */
export function wayWords(lead: Lead, units: UnitChoice): string | null {
  if (lead.form === 'bar') return barWords(lead, units);
  const { ways } = say;
  const size = printedWords(lead);
  const across = lead.diameterMm === undefined ? null : formatLength(lead.diameterMm, units);
  switch (lead.way) {
    case 'printed':
      return ways.printed(size ?? testWords.notSaid);
    case 'bareStrands':
      return ways.bareStrands(across ?? testWords.notSaid);
    case 'overInsulation':
      return ways.overInsulation(across ?? testWords.notSaid);
    case undefined:
      if (size !== null) return ways.printed(size);
      return across === null ? null : testWords.listed([ways.notSaid, across]);
  }
}

/** "35 mm²", "AWG 2"; both where both are printed. */
function printedWords({ printedMm2, printedAwg }: Lead): string | null {
  const parts = [
    ...(printedMm2 === undefined ? [] : [formatValue(printedMm2, 'mm²')]),
    ...(printedAwg === undefined ? [] : [say.awg(printedAwg)]),
  ];
  return parts.length === 0 ? null : testWords.listed(parts);
}

function barWords({ widthMm, thicknessMm, layers }: Lead, units: UnitChoice): string | null {
  if (widthMm === undefined && thicknessMm === undefined) return null;
  const side = (mm: number | undefined) => (mm === undefined ? testWords.notSaid : formatLength(mm, units));
  const size = say.barSize(side(widthMm), side(thicknessMm));
  return say.ways.bar(layers === undefined ? size : testWords.listed([size, say.layers(layers)]));
}

/** That a size came from a photo, and how sure it is while it still is that size; null where it did not. */
export function photoWords({ form, diameterMm, widthMm, rulerId, byPhoto }: Lead, units: UnitChoice): string | null {
  if (byPhoto !== undefined && byPhoto.mm === (form === 'bar' ? widthMm : diameterMm)) {
    return say.photoWithin(formatLength(Number(byPhoto.plusMinusMm.toPrecision(2)), units));
  }
  return rulerId === undefined ? null : say.photo;
}
