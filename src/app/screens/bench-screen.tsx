import { useState } from 'preact/hooks';
import type { PackCard } from '../../schema/pack-card.ts';
import { benchWords as say } from '../../text/bench.ts';
import { words, writeProblems } from '../../text/words.ts';
import { BenchCard } from '../../ui/bench-card.tsx';
import { Screen } from '../../ui/screen.tsx';
import { BenchNotices } from '../parts/bench-notices.tsx';
import { usePhotoUrl } from '../photos/use-photo-url.ts';
import { goTo, hrefTo } from '../route.ts';
import { cards } from '../state/bench.ts';

/** More packs than this do not fit one screen of a phone: then a search box appears. */
const SCREENFUL = 5;

/** The first screen: the packs on the bench. */
export function BenchScreen() {
  const [sought, setSought] = useState('');
  const [busy, setBusy] = useState(false);
  const [wrong, setWrong] = useState<string | null>(null);
  const here = cards.value.filter(({ gone }) => !gone);
  const demoIsIn = here.some(({ demo }) => demo);
  const shown = here.filter((card) => matches(card, sought));

  async function begin() {
    setWrong(null);
    const loaded = await import('../new-pack.ts').catch(() => null);
    if (!loaded) {
      setWrong(say.beginNotFetched);
      return;
    }
    try {
      const packId = await loaded.newPack();
      if (packId === null) setWrong(say.notBegun);
      else goTo(hrefTo(packId, 'nameplate'));
    } catch (error) {
      console.error('new pack: not begun', error);
      setWrong(say.notBegun);
    }
  }
  async function demo() {
    setBusy(true);
    setWrong(null);
    try {
      const { layOutDemo, putDemoAway } = await import('../demo/demo-bench.ts');
      const problem = demoIsIn ? await putDemoAway() : await layOutDemo();
      if (problem) setWrong(writeProblems[problem]);
    } catch (error) {
      console.error('demo bench: not laid out', error);
      setWrong(say.demoFailed);
    } finally {
      setBusy(false);
    }
  }
  const demoButton = (
    <button type="button" class="button" disabled={busy} onClick={() => void demo()}>
      {busy ? say.demoBusy : demoIsIn ? say.demoOut : say.demoIn}
    </button>
  );

  return (
    <Screen
      title={say.title}
      end={
        <a class="back" href="#/keep">
          {say.keep}
        </a>
      }
      dock={
        <button type="button" class="button primary" onClick={() => void begin()}>
          {say.newPack}
        </button>
      }
    >
      <BenchNotices empty={here.length === 0} />
      {wrong && (
        <p class="notice" role="alert">
          {wrong}
        </p>
      )}
      {here.length > SCREENFUL && (
        <div class="box">
          <input
            type="search"
            aria-label={say.search}
            placeholder={say.search}
            value={sought}
            onInput={(event) => setSought(event.currentTarget.value)}
          />
        </div>
      )}
      {here.length === 0 ? (
        <div class="stack">
          <p>{say.empty}</p>
          <p class="muted">{say.emptyHint}</p>
        </div>
      ) : (
        <ul class="packs">
          {shown.map((card) => (
            <li key={card.packId}>
              <PackOnBench card={card} />
            </li>
          ))}
        </ul>
      )}
      {here.length > 1 && (
        <a class="button" href="#/side-by-side">
          {say.sideBySide}
        </a>
      )}
      {here.length > 0 && shown.length === 0 && <p class="muted">{say.noMatch(sought)}</p>}
      <section class="stack push">
        {demoIsIn ? <p class="small muted">{say.demoIsIn}</p> : <p class="small muted">{say.demoHint}</p>}
        {demoButton}
      </section>
    </Screen>
  );
}

function PackOnBench({ card }: { card: PackCard }) {
  return <BenchCard card={card} href={hrefTo(card.packId)} pictureUrl={usePhotoUrl(card.photoId, 'thumbs')} />;
}

function matches(card: PackCard, sought: string): boolean {
  const label = words.packLabel(card.name, card.sample).toLowerCase();
  return sought
    .toLowerCase()
    .split(/\s+/)
    .every((part) => label.includes(part));
}
