import { randomId } from '../../../storage/open-store.ts';
import { formatDay } from '../../../text/format-day.ts';
import { formatValue } from '../../../text/format-unit.ts';
import { editingWords } from '../../../text/live-tests/editing.ts';
import { runWords as say } from '../../../text/live-tests/run.ts';
import { Screen } from '../../../ui/screen.tsx';
import { SavedLine } from '../../parts/saved-line.tsx';
import { SmokeHelp } from '../../parts/smoke-help.tsx';
import { goTo, hrefTo } from '../../route.ts';
import type { PackSession } from '../../state/pack-session.ts';
import { stopFindings } from '../../stop-findings.ts';
import { Cautions } from '../cautions.tsx';
import { runKind } from '../kinds/run.ts';
import { ResultView } from '../result-view.tsx';
import { contextOf } from '../test-context.ts';
import type { TestContext, TestValue } from '../test-kind.ts';
import { unfinishedTests } from '../unfinished.ts';
import { RunGlance } from './run-glance.tsx';

/** All capacity runs: what they come to, each in a line, then their curves and how every figure was worked out. */
export function RunList({ session, back }: { session: PackSession; back: { href: string; label: string } }) {
  const record = session.record.value;
  const { packId } = record;
  const context = contextOf(record);
  const runs = runKind.testsOf(record.tests);
  const known = new Set(runs.map(({ id }) => id));
  const unfinished = Object.entries(unfinishedTests(packId, runKind.id).value).filter(([id]) => !known.has(id));
  const stopped = stopFindings(session.definition.definition, session.grading.value).length > 0;
  const at = (id: string) => hrefTo(packId, 'live-test', `${runKind.id}/${id}`);

  return (
    <Screen
      title={say.title}
      back={back}
      middle={<SmokeHelp record={record} />}
      dockClass="two-rows"
      dock={
        <>
          <SavedLine session={session} />
          <a class="button" href={hrefTo(packId, 'live-test', 'log')}>
            {say.bringIn}
          </a>
          <button type="button" class="button primary" onClick={() => goTo(at(randomId()))}>
            {stopped ? editingWords.addEarlier(say.one) : editingWords.add(say.one)}
          </button>
        </>
      }
    >
      {runs.length > 0 && <RunGlance record={record} context={context} />}
      <p class="muted">
        {say.lead} {gentleWords(record.nameplate.ratedCapacityAh)}
      </p>
      {stopped ? (
        <p class="notice">{editingWords.stopped}</p>
      ) : (
        <Cautions lines={say.cautions} open={runs.length === 0} />
      )}
      <ul class={runs.length + unfinished.length > 0 ? 'lines' : ''} aria-label={say.list}>
        {runs.map((run, place) => (
          <RunLine key={run.id} mark={String(place + 1)} href={at(run.id)} run={run} context={context} side="›" />
        ))}
        {unfinished.map(([id, run]) => (
          <RunLine key={id} mark="…" href={at(id)} run={run} context={context} side={editingWords.unfinished} />
        ))}
      </ul>
      {runs.length + unfinished.length === 0 && <p class="muted">{editingWords.none}</p>}
      {runs.length > 0 && <ResultView blocks={runKind.results?.(context, null) ?? []} />}
    </Screen>
  );
}

interface RunLineProps {
  mark: string;
  href: string;
  run: TestValue<'run'>;
  context: TestContext;
  side: string;
}

function RunLine({ mark, href, run, context, side }: RunLineProps) {
  const summary = runKind.summary(run, context);
  const instrument = context.tests.instruments.find(({ id }) => id === run.instrumentId);
  const under = [
    ...(run.on === undefined ? [] : [formatDay(run.on)]),
    ...(instrument === undefined ? [] : [instrument.name]),
    ...(run.log === undefined ? [] : [say.fromLog]),
  ];
  return (
    <li>
      <a class="line" href={href}>
        <span class="fact-mark">{mark}</span>
        <span>
          <span class="title">{summary === '' ? editingWords.notYet : summary}</span>
          {under.length > 0 && (
            <>
              <br />
              <span class="small muted">{say.summary(under)}</span>
            </>
          )}
        </span>
        <span class="side">{side}</span>
      </a>
    </li>
  );
}

/** What 0.2C comes to, where the capacity is promised. */
function gentleWords(ratedCapacityAh: number | undefined): string {
  return ratedCapacityAh === undefined ? '' : say.gentle(formatValue(0.2 * ratedCapacityAh, 'A'));
}
