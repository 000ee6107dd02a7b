import { randomId } from '../../storage/open-store.ts';
import { formatDay } from '../../text/format-day.ts';
import { editingWords as say } from '../../text/live-tests/editing.ts';
import { liveTestsWords } from '../../text/live-tests/live-tests.ts';
import { Screen } from '../../ui/screen.tsx';
import { SavedLine } from '../parts/saved-line.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { stopFindings } from '../stop-findings.ts';
import { Cautions } from './cautions.tsx';
import { ResultView } from './result-view.tsx';
import { contextOf } from './test-context.ts';
import type { OneByOne, TestContext, TestKind, TestValue } from './test-kind.ts';
import { unfinishedTests } from './unfinished.ts';

interface TestListProps<S extends OneByOne> {
  session: PackSession;
  kind: TestKind<S>;
  back: { href: string; label: string };
}

/** All tests of one kind, with their days and instruments, in the order in which they were made. */
export function TestList<S extends OneByOne>({ session, kind, back }: TestListProps<S>) {
  const record = session.record.value;
  const { packId } = record;
  const context = contextOf(record);
  const tests = kind.testsOf(record.tests);
  const stored = new Set(tests.map(({ id }) => id));
  const unfinished = Object.entries(unfinishedTests(packId, kind.id).value).filter(([id]) => !stored.has(id));
  const stopped = stopFindings(session.definition.definition, session.grading.value).length > 0;
  const at = (id: string) => hrefTo(packId, 'live-test', `${kind.id}/${id}`);

  return (
    <Screen
      title={kind.words.title}
      back={back}
      middle={<SmokeHelp record={record} />}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          <a class="button" href={back.href}>
            {liveTestsWords.backToAll}
          </a>
          <button type="button" class="button primary" onClick={() => goTo(at(randomId()))}>
            {stopped ? say.addEarlier(kind.words.one) : say.add(kind.words.one)}
          </button>
        </>
      }
    >
      <p class="muted">{kind.words.lead}</p>
      {stopped ? (
        <p class="notice">{say.stopped}</p>
      ) : (
        <Cautions lines={kind.words.cautions} open={tests.length === 0} />
      )}
      <ul class={tests.length + unfinished.length > 0 ? 'lines' : ''}>
        {tests.map((test, place) => (
          <li key={test.id}>
            <a class="line" href={at(test.id)}>
              <span class="fact-mark">{place + 1}</span>
              <TestLine kind={kind} value={test as TestValue<S>} context={context} />
              <span class="side">›</span>
            </a>
          </li>
        ))}
        {unfinished.map(([id, value]) => (
          <li key={id}>
            <a class="line" href={at(id)}>
              <span class="fact-mark">…</span>
              <TestLine kind={kind} value={value as TestValue<S>} context={context} />
              <span class="side">{say.unfinished}</span>
            </a>
          </li>
        ))}
      </ul>
      {tests.length + unfinished.length === 0 && <p class="muted">{say.none}</p>}
      {tests.length > 0 && kind.results && <ResultView blocks={kind.results(context, null)} />}
      {kind.BelowList && <kind.BelowList session={session} />}
    </Screen>
  );
}

function TestLine<S extends OneByOne>({
  kind,
  value,
  context,
}: {
  kind: TestKind<S>;
  value: TestValue<S>;
  context: TestContext;
}) {
  const summary = kind.summary(value, context);
  const { on, instrumentId }: { on?: string; instrumentId?: string } = value;
  const instrument = context.tests.instruments.find(({ id }) => id === instrumentId);
  const under = [on === undefined ? '' : formatDay(on), instrument?.name ?? ''].filter(Boolean).join(' · ');
  return (
    <span>
      <span class="title">{summary === '' ? say.notYet : summary}</span>
      {under !== '' && (
        <>
          <br />
          <span class="small muted">{under}</span>
        </>
      )}
    </span>
  );
}
