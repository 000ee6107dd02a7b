import { render } from 'preact';
import { openStore } from '../storage/open-store.ts';
import { startWords } from '../text/start.ts';
import { App, loadAhead } from './app.tsx';
import { findDroppedPhoto } from './photos/awaiting.ts';
import { goTo, watchRoute } from './route.ts';
import { refreshBench } from './state/bench.ts';
import { watchKeeping } from './state/keeping.ts';
import { watchVersions } from './state/newer-version.ts';
import { otherTabWrote } from './state/other-tab.ts';
import { showSettings } from './state/settings.ts';
import { setStore } from './state/store.ts';
import { vanished } from './state/vanished.ts';

/** Opens the records and shows the first screen. Without records nothing else is of use: then it says why. */
export async function start(): Promise<void> {
  const root = document.getElementById('app');
  if (!root) throw new Error('start: index.html has no #app');
  showSettings();
  const result = await openStore();
  if (!result.ok) {
    console.error('records: not opened', result.problem, result.detail);
    render(<NoRecords problem={result.problem} />, root);
    return;
  }
  setStore(result.store);
  vanished.value = result.vanished;
  result.store.onOtherTab((packId) => {
    void refreshBench();
    otherTabWrote.value = { packId };
  });
  watchRoute();
  const [dropped] = await Promise.all([findDroppedPhoto(), refreshBench(), watchKeeping()]);
  if (dropped) goTo(dropped.href, { replace: true });
  render(<App />, root);
  loadAhead();
  void watchVersions();
}

function NoRecords({ problem }: { problem: keyof typeof startWords.problems }) {
  return (
    <div class="screen">
      <main class="body">
        <h1>{startWords.title}</h1>
        <p class="notice" role="alert">
          {startWords.problems[problem]}
        </p>
        <button type="button" class="button primary" onClick={() => location.reload()}>
          {startWords.again}
        </button>
      </main>
    </div>
  );
}
