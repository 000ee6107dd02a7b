import { type CutOffKind, WAKE_UPS } from '../../../schema/live-tests/cut-off.ts';
import { RECOVERIES } from '../../../schema/live-tests/trip.ts';
import { cutOffBlocks } from '../../../sheet/model/live-tests/cut-off-blocks.ts';
import { cutOffWords as say } from '../../../text/live-tests/cut-off.ts';
import { recoveryWords } from '../../../text/live-tests/trip.ts';
import type { TestKind } from '../test-kind.ts';
import { cutOffNotices, cutOffSummary, kindsShown, type Trial } from './cut-off-words.ts';

/** The three that the closed pack can be brought to; the four of its sensors are in `sensor.ts`. */
const CLOSED_PACK = ['highVoltage', 'lowVoltage', 'chargeCurrent'] as const;

const ofVoltage = ({ kind }: Trial) => kind === 'highVoltage' || kind === 'lowVoltage';

export const cutOffKind: TestKind<'cutOff'> = {
  id: 'cut-off',
  subject: 'cutOff',
  words: say,
  labels: say.labels,
  testsOf: ({ cutOffs }) => cutOffs.filter(({ kind }) => isOfClosedPack(kind)),
  groups: [
    {
      fields: [
        { box: 'choice', key: 'kind', choices: CLOSED_PACK.map((id) => ({ id, text: say.kinds[id] })) },
        { box: 'yesNo', key: 'acted', yes: say.acted, no: say.notActed },
        {
          box: 'choice',
          key: 'by',
          choices: (['bms', 'thermalSwitch'] as const).map((id) => ({ id, text: say.by[id] })),
          when: ({ acted }) => acted === true,
        },
        {
          box: 'number',
          key: 'worstCellVoltageV',
          unit: 'V',
          least: 'any',
          when: ofVoltage,
          label: ({ kind }) => (kind === 'lowVoltage' ? say.lowestCell : say.highestCell),
        },
        { box: 'number', key: 'packVoltageV', unit: 'V', least: 'zero', when: ofVoltage },
        {
          box: 'number',
          key: 'currentA',
          unit: 'A',
          least: 'aboveZero',
          when: ({ kind }) => kind !== undefined,
          label: ({ kind }) => (kind === 'lowVoltage' ? say.labels.currentA : say.chargeCurrent),
        },
        { box: 'number', key: 'afterS', unit: 's', least: 'zero', when: ({ kind }) => kind === 'chargeCurrent' },
      ],
      notices: cutOffNotices,
    },
    {
      title: say.afterwards,
      fields: [
        {
          box: 'choice',
          key: 'recovery',
          choices: RECOVERIES.filter((id) => id !== 'cooling').map((id) => ({ id, text: recoveryWords[id] })),
          when: ({ acted }) => acted === true,
        },
        {
          box: 'number',
          key: 'recoveredAtV',
          unit: 'V',
          least: 'zero',
          when: (trial) => trial.acted === true && ofVoltage(trial),
        },
        {
          box: 'choice',
          key: 'wakeUp',
          choices: WAKE_UPS.map((id) => ({ id, text: say.wakeUps[id] })),
          when: ({ kind, acted }) => kind === 'lowVoltage' && acted === true,
        },
      ],
    },
  ],
  summary: cutOffSummary,
  results: (context, id) => cutOffBlocks(context, kindsShown(context.tests, id) ?? CLOSED_PACK),
};

function isOfClosedPack(kind: CutOffKind): boolean {
  return CLOSED_PACK.some((one) => one === kind);
}
