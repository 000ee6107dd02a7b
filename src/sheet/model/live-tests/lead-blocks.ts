import { isMainCable, leadResults } from '../../../grading/live-tests/lead-result.ts';
import type { LeadResult } from '../../../grading/live-tests/results.ts';
import { formatLength, formatTemperature } from '../../../text/format-unit.ts';
import { figureIn, roughIn, span } from '../../../text/live-tests/results/figures.ts';
import { leadWords as say } from '../../../text/live-tests/results/lead.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block, ResultBlock, ResultRow } from '../sheet.ts';
import { leadKind, leadName } from './lead-name.ts';
import { photoWords, wayWords } from './lead-way.ts';
import { workingOfLead } from './lead-working.ts';
import type { LiveContext } from './live-context.ts';
import { meltingRow } from './melting-row.ts';
import { closingRows, figureRow, only, row, testTitle } from './test-rows.ts';
import { withstandRow } from './withstand-words.ts';
import { workedOut } from './worked-out.ts';

/** Leads and bars: their section with the way it is known, what they may carry, and how long they stand a trip. */
export function leadBlocks(context: LiveContext, id?: string): Block[] {
  return workedOut(say.matter, () =>
    only(leadResults(context), id, ({ lead }) => lead.id).map((result) => leadBlock(result, context)),
  );
}

function leadBlock(result: LeadResult, context: LiveContext): ResultBlock {
  const { lead, areaMm2 } = result;
  return {
    kind: 'result',
    id: `lead-${lead.id}`,
    title: testTitle(leadName(lead.id, context), lead, leadKind(lead)),
    value: areaMm2 === null ? say.noArea : span(areaMm2, 'mm²'),
    marks: [],
    rows: [
      ...row(say.labels.why, result.areaRefused === null ? null : say.because[result.areaRefused]),
      ...row(say.labels.way, wayWords(lead, context.units), photoWords(lead, context.units)),
      ...madeRows(lead, context),
      ...allowableRows(result),
      ...shortRows(result, context),
      ...loadedRows(result, context),
      ...(result.withstand === null
        ? []
        : withstandRow(result.withstand, context).map((one) => ({ ...one, label: say.labels.withstand }))),
      ...meltingRow(result),
      ...closingRows(lead, context),
    ],
    working: workingOfLead(result, context),
  };
}

function madeRows(lead: LeadResult['lead'], { units }: LiveContext): ResultRow[] {
  const mark = lead.insulationDegC === undefined ? [] : [say.marked(formatTemperature(lead.insulationDegC, units))];
  const insulation = [...(lead.insulation === undefined ? [] : [say.insulations[lead.insulation]]), ...mark];
  return [
    ...row(say.labels.metal, lead.metal === undefined ? null : say.metals[lead.metal]),
    ...row(say.labels.insulation, testWords.listed(insulation)),
    ...figureRow(say.labels.length, lead.lengthMm, { say: (mm) => formatLength(mm, units) }),
    ...figureRow(say.labels.around, lead.aroundDegC, { say: (degC) => formatTemperature(degC, units) }),
  ];
}

function allowableRows({ lead, allowable, counted, areaMm2 }: LeadResult): ResultRow[] {
  if (areaMm2 === null) return [];
  const isShared = (lead.count ?? 1) > 1 ? row(say.labels.counted, say.counted[counted]) : [];
  if (allowable === null) return [...row(say.labels.allowable, say.allowableNone, allowableLacks(lead)), ...isShared];
  const { lowA, highA } = allowable;
  const isRange = lowA !== highA;
  return [
    ...row(
      say.labels.allowable,
      span({ low: lowA, high: highA }, 'A'),
      isRange ? say.allowableFrom(figureIn(lowA, 'A')) : null,
    ),
    ...isShared,
  ];
}

/** That a main lead is allowed less than the pack promises, or may be where its section is known within limits only. */
function shortRows(result: LeadResult, { nameplate: { continuousCurrentA } }: LiveContext): ResultRow[] {
  const { allowable } = result;
  if (allowable === null || continuousCurrentA === undefined || !isMainCable(result)) return [];
  if (allowable.lowA >= continuousCurrentA) return [];
  const { fallsShort, mayFallShort } = say.labels;
  const label = allowable.highA < continuousCurrentA ? fallsShort : mayFallShort;
  return row(label, say.promised(figureIn(continuousCurrentA, 'A')));
}

/** Why nothing is allowed of a lead whose section is known. */
function allowableLacks({ form, metal = 'copper', insulationDegC }: LeadResult['lead']): string {
  if (form === 'bar') return say.noAllowable.bar;
  if (metal !== 'copper') return say.noAllowable.metal;
  return insulationDegC === undefined ? say.noAllowable.insulation : say.noAllowable.table;
}

function loadedRows(result: LeadResult, { units }: LiveContext): ResultRow[] {
  const { densityAPerMm2, resistanceMohm, resistanceAtDegC, dropMv, heatW } = result;
  return [
    ...figureRow(say.labels.density, densityAPerMm2, { say: (density) => roughIn(density, 'A/mm²') }),
    ...figureRow(say.labels.resistance, resistanceMohm, {
      say: (mohm) => roughIn(mohm, 'mΩ'),
      note: say.atTemperature(formatTemperature(resistanceAtDegC, units)),
    }),
    ...figureRow(say.labels.drop, dropMv, { say: (mv) => roughIn(mv, 'mV') }),
    ...figureRow(say.labels.heat, heatW, { say: (watts) => roughIn(watts, 'W') }),
  ];
}
