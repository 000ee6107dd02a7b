import { render } from 'preact';
import { openStore } from '../storage/open-store.ts';
import { App, loadAhead } from './app.tsx';
import { watchOpenedFiles } from './opened-files.ts';
import { LeftBehindDialog } from './parts/left-behind-dialog.tsx';
import { NotSavedElsewhere } from './parts/not-saved-elsewhere.tsx';
import { RecordsClosed } from './parts/records-closed.tsx';
import { findDroppedPhoto } from './photos/awaiting.ts';
import { goTo, watchRoute } from './route.ts';
import { refreshBench } from './state/bench.ts';
import { watchKeeping } from './state/keeping.ts';
import { findLeftBehind } from './state/left-behind.ts';
import { watchVersions } from './state/newer-version.ts';
import { takeIntoUse } from './state/reach-records.ts';
import { showSettings } from './state/settings.ts';
import { allUnsaved } from './state/unsaved-sessions.ts';
import { watchTray } from './tray/waiting.ts';

/** Opens the records and shows the first screen. Without records nothing else is of use: then it says why. */
export async function start(): Promise<void> {
  const root = document.getElementById('app');
  if (!root) throw new Error('start: index.html has no #app');
  showSettings();
  const result = await openStore();
  if (!result.ok) {
    console.error('records: not opened', result.problem, result.detail);
    const { NoRecords } = await import('./parts/no-records.tsx');
    render(<NoRecords problem={result.problem} />, root);
    // A newer version that waits may open what this one cannot.
    void watchVersions();
    return;
  }
  takeIntoUse(result);
  findLeftBehind();
  watchRoute();
  const [dropped] = await Promise.all([findDroppedPhoto(), refreshBench(), watchKeeping()]);
  if (dropped) goTo(dropped.href, { replace: true });
  addEventListener('beforeunload', (event) => {
    if (allUnsaved().length > 0) event.preventDefault();
  });
  render(
    <>
      <NotSavedElsewhere />
      <App />
      <LeftBehindDialog />
      <RecordsClosed />
    </>,
    root,
  );
  loadAhead();
  watchTray();
  watchOpenedFiles();
  void watchVersions();
}
