import { readOutBlocks } from '../../../sheet/model/live-tests/read-out-blocks.ts';
import { formatValue } from '../../../text/format-unit.ts';
import { readOutWords as say } from '../../../text/live-tests/read-out.ts';
import type { TestKind, TestValue } from '../test-kind.ts';

type ReadOut = TestValue<'readOut'>;
const answers = ({ connected }: ReadOut) => connected === true;

export const readOutKind: TestKind<'readOut'> = {
  id: 'read-out',
  subject: 'readOut',
  words: say,
  labels: say.labels,
  testsOf: ({ readOuts }) => readOuts,
  groups: [
    {
      fields: [
        {
          box: 'choice',
          key: 'way',
          choices: (['wireless', 'cable', 'display'] as const).map((id) => ({ id, text: say.ways[id] })),
        },
        { box: 'yesNo', key: 'connected' },
        {
          box: 'number',
          key: 'rangeM',
          unit: 'm',
          least: 'zero',
          hint: say.rangeHint,
          when: (test) => test.way === 'wireless' && answers(test),
        },
        { box: 'yesNo', key: 'accountNeeded', when: ({ way }) => way !== undefined && way !== 'display' },
        { box: 'yesNo', key: 'worksOffline', when: ({ way }) => way !== undefined && way !== 'display' },
        { box: 'yesNo', key: 'showsCells', when: answers },
        { box: 'yesNo', key: 'showsTemperatures', when: answers },
      ],
    },
  ],
  summary({ way, connected, rangeM, accountNeeded }) {
    const answer =
      connected === undefined
        ? undefined
        : !connected
          ? say.noAnswer
          : rangeM === undefined
            ? say.answers
            : say.upTo(formatValue(rangeM, 'm'));
    return [way && say.ways[way], answer, accountNeeded === true ? say.account : undefined].filter(Boolean).join(' · ');
  },
  results: (context, id) => readOutBlocks(context, ...(id === null ? [] : [id])),
};
