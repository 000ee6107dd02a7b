import { liveTestsWords } from '../../../text/live-tests/live-tests.ts';
import { lazily } from '../../parts/lazily.tsx';
import { hrefTo } from '../../route.ts';
import { cellCodeKind } from '../kinds/cell-code.ts';
import type { LiveTestPart } from '../live-test-part.ts';
import { oneByOne } from '../one-by-one.tsx';
import { TestList } from '../test-list.tsx';

const CodeScreen = lazily(() => import('./code-screen.tsx').then((module) => module.CodeScreen));

/** Codes on cells: the list of every kind, and a screen of its own for one, with the reader behind it. */
export const codePart: LiveTestPart = {
  ...oneByOne(cellCodeKind),
  Screen({ session, testId }) {
    const back = { href: hrefTo(session.packId, 'live-tests'), label: liveTestsWords.title };
    return testId === '' ? (
      <TestList session={session} kind={cellCodeKind} back={back} />
    ) : (
      <CodeScreen key={testId} session={session} id={testId} />
    );
  },
};
