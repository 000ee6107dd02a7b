import { rulerResults } from '../../../grading/live-tests/ruler-results.ts';
import { rulerBlocks } from '../../../sheet/model/live-tests/ruler-blocks.ts';
import { randomId } from '../../../storage/open-store.ts';
import { editingWords } from '../../../text/live-tests/editing.ts';
import { liveTestsWords } from '../../../text/live-tests/live-tests.ts';
import { rulerWords as say } from '../../../text/live-tests/ruler.ts';
import { Screen } from '../../../ui/screen.tsx';
import { SavedLine } from '../../parts/saved-line.tsx';
import { SmokeHelp } from '../../parts/smoke-help.tsx';
import { goTo, hrefTo } from '../../route.ts';
import type { PackSession } from '../../state/pack-session.ts';
import { Cautions } from '../cautions.tsx';
import { ResultView } from '../result-view.tsx';
import { contextOf } from '../test-context.ts';
import { unfinishedTests } from '../unfinished.ts';
import { distanceWords } from './ruler-words.ts';

/** All distances taken from photos. */
export function RulerList({ session }: { session: PackSession }) {
  const record = session.record.value;
  const { packId, photos } = record;
  const context = { ...contextOf(record), photos };
  const results = rulerResults(record);
  const known = new Set(results.map(({ ruler }) => ruler.id));
  const unfinished = Object.keys(unfinishedTests(packId, 'ruler').value).filter((id) => !known.has(id));
  const at = (id: string) => hrefTo(packId, 'live-test', `ruler/${id}`);
  const back = { href: hrefTo(packId, 'live-tests'), label: liveTestsWords.title };
  return (
    <Screen
      title={say.title}
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
            {editingWords.add(say.one)}
          </button>
        </>
      }
    >
      <p class="muted">{say.lead}</p>
      <Cautions lines={say.cautions} open={results.length === 0} />
      <ul class={results.length + unfinished.length > 0 ? 'lines' : ''}>
        {results.map(({ ruler, distance }, place) => (
          <li key={ruler.id}>
            <a class="line" href={at(ruler.id)}>
              <span class="fact-mark">{place + 1}</span>
              <span>
                <span class="title">{distanceWords(distance, context.units)}</span>
                {ruler.label !== undefined && <span class="small muted newest">{ruler.label}</span>}
              </span>
              <span class="side">›</span>
            </a>
          </li>
        ))}
        {unfinished.map((id) => (
          <li key={id}>
            <a class="line" href={at(id)}>
              <span class="fact-mark">…</span>
              <span class="title">{say.one}</span>
              <span class="side">{editingWords.unfinished}</span>
            </a>
          </li>
        ))}
      </ul>
      {results.length + unfinished.length === 0 && <p class="muted">{editingWords.none}</p>}
      <ResultView blocks={rulerBlocks(context)} />
    </Screen>
  );
}
