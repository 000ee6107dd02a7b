import type { LeadResult } from '../../../grading/live-tests/results.ts';
import { formatTemperature } from '../../../text/format-unit.ts';
import { figureIn } from '../../../text/live-tests/results/figures.ts';
import { leadWords as say } from '../../../text/live-tests/results/lead.ts';
import type { CalculationSource } from '../../../text/live-tests/results/sources.ts';
import type { Working } from '../sheet.ts';
import { wayWords } from './lead-way.ts';
import type { LiveContext } from './live-context.ts';
import { meltingRow } from './melting-row.ts';
import { figureRow, row } from './test-rows.ts';
import { withstandInputs } from './withstand-words.ts';
import { workingOf } from './working-of.ts';

/** How the figures of one lead were worked out; null where only a printed size was noted. */
export function workingOfLead(result: LeadResult, context: LiveContext): Working | null {
  const { lead, allowable, resistanceMohm, dropMv, withstand } = result;
  const { formulas, labels } = say;
  const steps: [boolean, string, CalculationSource[]][] = [
    ...areaStep(result),
    [allowable !== null, formulas.allowable, (lead.count ?? 1) > 1 ? ['allowable', 'parallelLeads'] : ['allowable']],
    [resistanceMohm !== null, formulas.resistance, ['conductorResistance', 'cableResistance']],
    [dropMv !== null, formulas.drop, ['ohm', 'joule']],
    [withstand !== null, formulas.withstand, ['withstand']],
    [meltingRow(result).length > 0, formulas.melts, ['melting']],
  ];
  const taken = steps.filter(([isTaken]) => isTaken);
  return workingOf({
    formulas: taken.map(([, formula]) => formula),
    inputs: [
      ...row(labels.size, wayWords(lead, context.units)),
      ...figureRow(labels.claim, context.nameplate.continuousCurrentA, { say: (a) => figureIn(a, 'A') }),
      ...figureRow(labels.insulation, lead.insulationDegC, { say: (degC) => formatTemperature(degC, context.units) }),
      ...(withstand === null ? [] : withstandInputs(withstand, context)),
    ].map(({ label, value }) => ({ label, value })),
    sources: taken.flatMap(([, , sources]) => sources),
  });
}

/** A printed metric size is the area itself: nothing was worked out. */
function areaStep({ lead, areaMm2 }: LeadResult): [boolean, string, CalculationSource[]][] {
  if (areaMm2 === null) return [];
  const { formulas } = say;
  if (lead.form === 'bar') return [[true, formulas.bar, ['definition']]];
  if (lead.way === 'bareStrands') return [[true, formulas.strands, ['strandFill']]];
  return [[lead.printedMm2 === undefined, formulas.awg, ['awg']]];
}
