import { RUN_END_CHOICES, SENSE_POINTS } from '../../../schema/live-tests/run.ts';
import { costBlocks } from '../../../sheet/model/live-tests/cost-blocks.ts';
import { deliveredBlocks } from '../../../sheet/model/live-tests/delivered-blocks.ts';
import { rateBlocks } from '../../../sheet/model/live-tests/rate-blocks.ts';
import { runBlocks } from '../../../sheet/model/live-tests/run-blocks.ts';
import { runPlotBlocks } from '../../../sheet/model/live-tests/run-plot-blocks.ts';
import { openedByWords, runEndSentences, runWords as say, sensePointWords } from '../../../text/live-tests/run.ts';
import { RunLog } from '../runs/run-log.tsx';
import type { TestKind } from '../test-kind.ts';
import { runNotices, runSummary } from './run-words.ts';

const S_PER_MIN = 60;
/** As stored, but figures read from a log have digits without end: six of them are shown. */
const READ = 1;

export const runKind: TestKind<'run'> = {
  id: 'run',
  subject: 'run',
  words: say,
  labels: say.labels,
  testsOf: ({ runs }) => runs,
  groups: [
    {
      title: say.came,
      fields: [
        { box: 'number', key: 'chargeAh', unit: 'Ah', least: 'aboveZero', storedPerShown: READ },
        { box: 'number', key: 'energyWh', unit: 'Wh', least: 'aboveZero', storedPerShown: READ },
        { box: 'number', key: 'durationS', unit: 'min', least: 'aboveZero', storedPerShown: S_PER_MIN },
        { box: 'number', key: 'currentA', unit: 'A', least: 'aboveZero', storedPerShown: READ },
      ],
      notices: runNotices,
    },
    {
      title: say.ended,
      fields: [
        { box: 'choice', key: 'end', choices: RUN_END_CHOICES.map((id) => ({ id, text: runEndSentences[id] })) },
        {
          box: 'choice',
          key: 'openedBy',
          choices: (['bms', 'load', 'hand'] as const).map((id) => ({ id, text: openedByWords[id] })),
        },
        { box: 'number', key: 'startVoltageV', unit: 'V', least: 'zero', storedPerShown: READ },
        { box: 'number', key: 'endVoltageV', unit: 'V', least: 'zero', storedPerShown: READ },
      ],
    },
    {
      title: say.began,
      lead: say.beganLead,
      fields: [
        { box: 'number', key: 'chargedToV', unit: 'V', least: 'aboveZero' },
        { box: 'number', key: 'taperA', unit: 'A', least: 'zero' },
        { box: 'number', key: 'restMin', unit: 'min', least: 'zero', storedPerShown: READ },
      ],
    },
    {
      title: say.conditions,
      fields: [
        { box: 'temperature', key: 'ambientDegC' },
        { box: 'temperature', key: 'cellStartDegC' },
        { box: 'temperature', key: 'cellEndDegC' },
        {
          box: 'choice',
          key: 'sensePoint',
          choices: SENSE_POINTS.map((id) => ({ id, text: sensePointWords[id] })),
        },
        { box: 'text', key: 'label', hint: say.nameHint },
      ],
    },
  ],
  summary: runSummary,
  results: (context, id) =>
    id === null
      ? [...runPlotBlocks(context), ...deliveredBlocks(context), ...costBlocks(context), ...rateBlocks(context)]
      : [...runBlocks(context, id), ...runPlotBlocks(context, id)],
  Below: RunLog,
};
