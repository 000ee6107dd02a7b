import { cellMarkBlocks } from '../../../sheet/model/live-tests/cell-mark-blocks.ts';
import { cellCodeWords as say } from '../../../text/live-tests/cell-code.ts';
import type { TestKind } from '../test-kind.ts';

/** Codes on cells, as they are listed. How one is typed or read from a photo is `codes/code-screen.tsx`. */
export const cellCodeKind: TestKind<'cellMark'> = {
  id: 'code',
  subject: 'cellMark',
  words: say,
  labels: say.labels,
  testsOf: ({ cellMarks }) => cellMarks,
  groups: [],
  summary: ({ text, cellNumber }) =>
    say.summary(cellNumber === undefined ? '' : say.cell(cellNumber), (text ?? '').replace(/\s+/g, ' ')),
  results: (context, id) => cellMarkBlocks(context, ...(id === null ? [] : [id])),
  standard: { day: false, instrument: false },
};
