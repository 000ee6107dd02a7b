import { useState } from 'preact/hooks';
import { randomId } from '../../storage/open-store.ts';
import { editingWords as say } from '../../text/live-tests/editing.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { Screen } from '../../ui/screen.tsx';
import { SmokeHelp } from '../parts/smoke-help.tsx';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { stopFindings } from '../stop-findings.ts';
import { Cautions } from './cautions.tsx';
import { openTest } from './open-test.ts';
import { ResultView } from './result-view.tsx';
import { contextOf } from './test-context.ts';
import { TestFields } from './test-fields.tsx';
import type { OneByOne, TestKind } from './test-kind.ts';
import { TestSaved } from './test-saved.tsx';

interface TestEditProps<S extends OneByOne> {
  session: PackSession;
  kind: TestKind<S>;
  id: string;
}

/** One test: its boxes, each kept as it is typed, and beneath them what it comes to. */
export function TestEdit<S extends OneByOne>({ session, kind, id }: TestEditProps<S>) {
  const [asking, setAsking] = useState(false);
  const record = session.record.value;
  const test = openTest(session, kind, id);
  const { stored } = test;
  const context = contextOf(record);
  const listHref = hrefTo(record.packId, 'live-test', kind.id);
  const number = kind.testsOf(record.tests).findIndex((one) => one.id === id) + 1;
  const stopped = stopFindings(session.definition.definition, session.grading.value).length > 0;

  async function remove() {
    await test.remove();
    goTo(listHref, { replace: true });
  }
  return (
    <Screen
      title={number > 0 ? say.numbered(kind.words.one, number) : say.newOne(kind.words.one)}
      back={{ href: listHref, label: kind.words.title }}
      middle={<SmokeHelp record={record} />}
      dockClass="two-rows"
      dock={
        <>
          <TestSaved session={session} missing={test.unfinished ? test.missing : []} />
          <button
            type="button"
            class="button"
            disabled={!stored && !test.unfinished}
            onClick={() => (stored ? void remove() : setAsking(true))}
          >
            {stored ? say.delete : say.discard}
          </button>
          {!stopped && (
            <button
              type="button"
              class="button"
              disabled={!stored}
              onClick={() => goTo(hrefTo(record.packId, 'live-test', `${kind.id}/${randomId()}`), { replace: true })}
            >
              {say.another}
            </button>
          )}
          <a class="button primary" href={listHref}>
            {say.done}
          </a>
        </>
      }
    >
      {stopped ? (
        <p class="notice">{say.stopped}</p>
      ) : (
        <Cautions lines={kind.words.cautions} open={kind.testsOf(record.tests).length === 0} />
      )}
      <TestFields kind={kind} test={test} context={context} owner={`${record.packId}/${id}`}>
        {stored && kind.Below && <kind.Below session={session} id={id} />}
      </TestFields>
      {stored && kind.results && <ResultView blocks={kind.results(context, id)} />}
      {asking && (
        <Dialog title={say.discard} onClose={() => setAsking(false)}>
          <p>{say.discardAsk}</p>
          <div class="row">
            <button type="button" class="button" onClick={() => setAsking(false)}>
              {say.keepIt}
            </button>
            <button type="button" class="button primary" onClick={() => void remove()}>
              {say.discard}
            </button>
          </div>
        </Dialog>
      )}
    </Screen>
  );
}
