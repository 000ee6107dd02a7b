import { lidOffWords } from '../../text/item.ts';
import { liveTestsWords } from '../../text/live-tests/live-tests.ts';
import { hrefTo } from '../route.ts';
import type { LiveTestPart } from './live-test-part.ts';
import { TestEdit } from './test-edit.tsx';
import type { OneByOne, TestKind, TestValue } from './test-kind.ts';
import { TestList } from './test-list.tsx';

/** The part of the live tests in which the tests of one kind are listed and filled in. */
export function oneByOne<S extends OneByOne>(
  kind: TestKind<S>,
  belongs: LiveTestPart['belongs'] = 'closed',
): LiveTestPart {
  return {
    id: kind.id,
    title: kind.words.title,
    belongs,
    count: (tests) => kind.testsOf(tests).length,
    newest(context) {
      const last = kind.testsOf(context.tests).at(-1);
      return last ? kind.summary(last as TestValue<S>, context) : '';
    },
    Screen({ session, testId }) {
      const { packId } = session;
      const back =
        belongs === 'closed'
          ? { href: hrefTo(packId, 'live-tests'), label: liveTestsWords.title }
          : { href: hrefTo(packId, 'lid-off'), label: lidOffWords.title };
      return testId === '' ? (
        <TestList session={session} kind={kind} back={back} />
      ) : (
        <TestEdit key={testId} session={session} kind={kind} id={testId} />
      );
    },
  };
}
