import { INSULATIONS, LEAD_PLACES, LEAD_WAYS, METALS } from '../../../schema/live-tests/lead.ts';
import { fuseBlocks } from '../../../sheet/model/live-tests/fuse-blocks.ts';
import { leadBlocks } from '../../../sheet/model/live-tests/lead-blocks.ts';
import { formatTyped } from '../../../text/format-number.ts';
import { formatLength, formatValue } from '../../../text/format-unit.ts';
import { leadWords as say } from '../../../text/live-tests/lead.ts';
import type { UnitChoice } from '../../../units/unit-choice.ts';
import type { TestKind, TestValue } from '../test-kind.ts';
import { tidyAwg } from './tidy-awg.ts';

type Lead = TestValue<'lead'>;
const isCable = ({ form }: Lead) => form === 'cable';
const isBar = ({ form }: Lead) => form === 'bar';

export const leadKind: TestKind<'lead'> = {
  id: 'lead',
  subject: 'lead',
  words: say,
  labels: say.labels,
  testsOf: ({ leads }) => leads,
  groups: [
    {
      fields: [
        { box: 'choice', key: 'place', choices: LEAD_PLACES.map((id) => ({ id, text: say.places[id] })) },
        {
          box: 'choice',
          key: 'form',
          choices: (['cable', 'bar'] as const).map((id) => ({ id, text: say.forms[id] })),
        },
        { box: 'text', key: 'label' },
      ],
    },
    {
      title: say.size,
      fields: [
        { box: 'choice', key: 'way', choices: LEAD_WAYS.map((id) => ({ id, text: say.ways[id] })), when: isCable },
        {
          box: 'number',
          key: 'printedMm2',
          unit: 'mm²',
          least: 'aboveZero',
          when: (lead) => isCable(lead) && lead.way === 'printed',
        },
        {
          box: 'text',
          key: 'printedAwg',
          tidy: tidyAwg,
          wrong: say.awgWrong,
          when: (lead) => isCable(lead) && lead.way === 'printed',
        },
        {
          box: 'length',
          key: 'diameterMm',
          when: (lead) => isCable(lead) && (lead.way === 'bareStrands' || lead.way === 'overInsulation'),
          label: ({ way }) => (way === 'overInsulation' ? say.overInsulation : say.overBare),
        },
        { box: 'length', key: 'widthMm', when: isBar },
        { box: 'length', key: 'thicknessMm', when: isBar },
        { box: 'number', key: 'layers', unit: '', least: 'aboveZero', whole: true, when: isBar },
        { box: 'number', key: 'count', unit: '', least: 'aboveZero', whole: true, when: isCable },
        { box: 'length', key: 'lengthMm' },
        { box: 'yesNo', key: 'equal', when: ({ count }) => (count ?? 1) > 1 },
        { box: 'choice', key: 'metal', choices: METALS.map((id) => ({ id, text: say.metals[id] })) },
      ],
      notices: ({ way, diameterMm }) =>
        way === 'overInsulation' && diameterMm !== undefined ? [say.insulationNoCurrent] : [],
    },
    {
      title: say.rest,
      fields: [
        { box: 'temperature', key: 'insulationDegC', when: isCable },
        { box: 'temperature', key: 'aroundDegC' },
        {
          box: 'choice',
          key: 'insulation',
          choices: INSULATIONS.map((id) => ({ id, text: say.insulations[id] })),
          when: isCable,
        },
      ],
    },
  ],
  summary(lead, { units }) {
    const { place, label } = lead;
    const name = label ?? (place === undefined ? undefined : say.places[place]);
    return [name, sizeWords(lead, units)].filter(Boolean).join(' · ');
  },
  results: (context, id) => (id === null ? [...leadBlocks(context), ...fuseBlocks(context)] : leadBlocks(context, id)),
};

function sizeWords(lead: Lead, units: UnitChoice): string {
  const { printedMm2, printedAwg, diameterMm, widthMm, thicknessMm, count = 1, layers = 1 } = lead;
  const bar =
    widthMm === undefined || thicknessMm === undefined
      ? undefined
      : say.box(formatLength(widthMm, units), formatLength(thicknessMm, units));
  const one =
    printedMm2 !== undefined
      ? formatValue(printedMm2, 'mm²')
      : printedAwg !== undefined
        ? say.awg(printedAwg)
        : diameterMm !== undefined
          ? say.across(formatLength(diameterMm, units))
          : bar;
  if (one === undefined) return '';
  const times = one === bar ? layers : count;
  return times > 1 ? say.count(formatTyped(times), one) : one;
}
