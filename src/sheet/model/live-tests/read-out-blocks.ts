import type { LiveTests } from '../../../schema/live-tests/live-tests.ts';
import { formatValue } from '../../../text/format-unit.ts';
import { readOutWords as say } from '../../../text/live-tests/results/read-out.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block, ResultBlock } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';
import { closingRows, figureRow, only, row, testName, testTitle } from './test-rows.ts';

/** What the read-out of the pack gives, and what it asks for. As read: nothing is worked out. */
export function readOutBlocks(context: LiveContext, id?: string): Block[] {
  return only(context.tests.readOuts, id, (readOut) => readOut.id).map((readOut) => readOutBlock(readOut, context));
}

function readOutBlock(readOut: LiveTests['readOuts'][number], context: LiveContext): ResultBlock {
  const { connected } = readOut;
  const yesNo = (value: boolean | undefined) => (value === undefined ? null : value ? testWords.yes : testWords.no);
  return {
    kind: 'result',
    id: `read-out-${readOut.id}`,
    title: testTitle(testName(say.one, context.tests.readOuts, readOut.id), readOut, say.ways[readOut.way]),
    value: connected === undefined ? say.notSaid : connected ? say.connected : say.notConnected,
    marks: [],
    rows: [
      ...figureRow(say.labels.range, readOut.rangeM, { say: (metres) => formatValue(metres, 'm') }),
      ...row(say.labels.account, yesNo(readOut.accountNeeded)),
      ...row(say.labels.offline, yesNo(readOut.worksOffline)),
      ...row(say.labels.cells, yesNo(readOut.showsCells)),
      ...row(say.labels.temperatures, yesNo(readOut.showsTemperatures)),
      ...closingRows(readOut, context),
    ],
    working: null,
  };
}
