import { drainBlocks } from '../../../sheet/model/live-tests/drain-blocks.ts';
import { formatValue } from '../../../text/format-unit.ts';
import { drainWords as say } from '../../../text/live-tests/drain.ts';
import type { TestKind } from '../test-kind.ts';

const MODES = ['awake', 'asleep', 'afterCutOff'] as const;

export const drainKind: TestKind<'drain'> = {
  id: 'drain',
  subject: 'drain',
  words: say,
  labels: say.labels,
  testsOf: ({ drains }) => drains,
  groups: [
    {
      fields: [
        { box: 'number', key: 'currentMa', unit: 'mA', least: 'zero' },
        { box: 'choice', key: 'mode', choices: MODES.map((id) => ({ id, text: say.modes[id] })) },
      ],
    },
  ],
  summary({ currentMa, mode }) {
    const current = currentMa === undefined ? '' : formatValue(currentMa, 'mA');
    const state = mode === undefined ? '' : say.modes[mode].toLowerCase();
    return current !== '' && state !== '' ? say.while(current, state) : current + state;
  },
  results: (context, id) => drainBlocks(context, ...(id === null ? [] : [id])),
};
