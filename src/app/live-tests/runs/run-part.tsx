import { liveTestsWords } from '../../../text/live-tests/live-tests.ts';
import { hrefTo } from '../../route.ts';
import { runKind } from '../kinds/run.ts';
import type { LiveTestPart } from '../live-test-part.ts';
import { oneByOne } from '../one-by-one.tsx';
import { TestEdit } from '../test-edit.tsx';
import { RunList } from './run-list.tsx';
import './runs.css';

/** Capacity runs: a list of their own, with what they come to above it and the way to a log. */
export const runPart: LiveTestPart = {
  ...oneByOne(runKind),
  Screen({ session, testId }) {
    const back = { href: hrefTo(session.packId, 'live-tests'), label: liveTestsWords.title };
    return testId === '' ? (
      <RunList session={session} back={back} />
    ) : (
      <TestEdit key={testId} session={session} kind={runKind} id={testId} />
    );
  },
};
