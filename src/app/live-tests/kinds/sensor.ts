import { TEMPERATURE_CUT_OFFS } from '../../../schema/live-tests/cut-off.ts';
import { RECOVERIES } from '../../../schema/live-tests/trip.ts';
import { cutOffBlocks } from '../../../sheet/model/live-tests/cut-off-blocks.ts';
import { cutOffWords } from '../../../text/live-tests/cut-off.ts';
import { sensorWords as say } from '../../../text/live-tests/sensor.ts';
import { recoveryWords } from '../../../text/live-tests/trip.ts';
import type { TestKind } from '../test-kind.ts';
import { cutOffNotices, cutOffSummary, kindsShown, type Trial } from './cut-off-words.ts';

const METHODS = ['cup', 'icePack', 'warmAir', 'ambient'] as const;
const AFTER = ['whole', 'loosened', 'melted'] as const;
const isHot = ({ kind }: Trial) => kind === 'hotCharge' || kind === 'hotDischarge';

/** Hot and cold, at the sensors of the open pack: the same stored shape as the other cut-offs, behind a gate. */
export const sensorKind: TestKind<'cutOff'> = {
  id: 'sensor',
  subject: 'cutOff',
  words: say,
  labels: { ...cutOffWords.labels, ...say.labels },
  testsOf: ({ cutOffs }) => cutOffs.filter(({ kind }) => TEMPERATURE_CUT_OFFS.some((one) => one === kind)),
  groups: [
    {
      fields: [
        {
          box: 'choice',
          key: 'kind',
          choices: TEMPERATURE_CUT_OFFS.map((id) => ({ id, text: cutOffWords.kinds[id] })),
        },
        { box: 'choice', key: 'method', choices: METHODS.map((id) => ({ id, text: say.methods[id] })) },
        { box: 'yesNo', key: 'acted', yes: say.acted, no: say.notActed },
        {
          box: 'choice',
          key: 'by',
          choices: (['bms', 'thermalSwitch'] as const).map((id) => ({ id, text: cutOffWords.by[id] })),
          when: ({ acted }) => acted === true,
        },
        {
          box: 'temperature',
          key: 'sensorDegC',
          label: ({ acted }) => (acted === true ? say.cutAt : acted === false ? say.reached : say.labels.sensorDegC),
        },
        { box: 'number', key: 'currentA', unit: 'A', least: 'aboveZero' },
      ],
      notices: cutOffNotices,
    },
    {
      title: say.afterwards,
      fields: [
        { box: 'choice', key: 'sensorAfter', choices: AFTER.map((id) => ({ id, text: say.after[id] })) },
        { box: 'yesNo', key: 'switchFitted', when: isHot },
        {
          box: 'choice',
          key: 'recovery',
          choices: RECOVERIES.map((id) => ({ id, text: recoveryWords[id] })),
          when: ({ acted }) => acted === true,
        },
        { box: 'temperature', key: 'recoveredAtDegC', when: ({ acted }) => acted === true },
      ],
    },
  ],
  summary: cutOffSummary,
  results: (context, id) => cutOffBlocks(context, kindsShown(context.tests, id) ?? TEMPERATURE_CUT_OFFS),
};
