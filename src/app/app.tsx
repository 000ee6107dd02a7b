import { packWords } from '../text/bench.ts';
import { lazily } from './parts/lazily.tsx';
import { Lost } from './parts/lost.tsx';
import { route } from './route.ts';
import { BenchScreen } from './screens/bench-screen.tsx';
import { askingSession } from './state/unsaved-sessions.ts';

/** Only the Bench is in the first load; the rest follows at once, so that the next tap finds it there. */
const loadPack = () => import('./open-pack-screen.tsx').then(({ OpenPackScreen }) => OpenPackScreen);
const loadKeep = () => import('./screens/keep-screen.tsx').then(({ KeepScreen }) => KeepScreen);
const OpenPackScreen = lazily(loadPack);
const RegradeScreen = lazily(() => import('./regrade/regrade-screen.tsx').then(({ RegradeScreen }) => RegradeScreen));
const KeepScreen = lazily(loadKeep);
const SideBySideScreen = lazily(() =>
  import('./side-by-side/side-by-side-page.tsx').then((file) => file.SideBySidePage),
);
const TrayScreen = lazily(() => import('./tray/tray-page.tsx').then((file) => file.TrayPage));
const LastPack = lazily(() => import('./last-pack.tsx').then((file) => file.LastPack));
const loadRevision = () => import('./closing/revision-dialog.tsx').then(({ RevisionDialog }) => RevisionDialog);
const RevisionDialog = lazily(loadRevision);

/** Which screen stands in for the address. Over any of them: why a closed sheet is to be changed. */
export function App() {
  const asking = askingSession.value;
  return (
    <>
      <ScreenHere />
      {asking && <RevisionDialog key={asking.packId} session={asking} />}
    </>
  );
}

function ScreenHere() {
  const here = route.value;
  if (here.screen === 'bench') return <BenchScreen />;
  if (here.screen === 'keep') return <KeepScreen />;
  if (here.screen === 'regrade') return <RegradeScreen />;
  if (here.screen === 'sideBySide') return <SideBySideScreen />;
  if (here.screen === 'tray') return <TrayScreen />;
  if (here.screen === 'last') return <LastPack />;
  if (here.screen === 'lost') return <Lost title={packWords.lost} hint={packWords.lostHint} />;
  return <OpenPackScreen packId={here.packId} />;
}

/** Fetches the other screens after the first one stands. */
export function loadAhead(): void {
  void Promise.all([loadPack(), loadKeep(), loadRevision()]).catch((error: unknown) => {
    console.warn('screens: not fetched ahead, they will be when needed', error);
  });
}
