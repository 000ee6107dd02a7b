import { useEffect } from 'preact/hooks';
import { packWords } from '../text/bench.ts';
import { words } from '../text/words.ts';
import { Screen } from '../ui/screen.tsx';
import { PackPlace } from './pack-place.tsx';
import { route } from './route.ts';
import { BenchScreen } from './screens/bench-screen.tsx';
import { KeepScreen } from './screens/keep-screen.tsx';
import { opened, openPack } from './state/open-pack.ts';

/** Which screen stands in for the address. */
export function App() {
  const here = route.value;
  if (here.screen === 'bench') return <BenchScreen />;
  if (here.screen === 'keep') return <KeepScreen />;
  if (here.screen === 'lost') return <Lost title={packWords.lost} hint={packWords.lostHint} />;
  return <OpenPack packId={here.packId} />;
}

function OpenPack({ packId }: { packId: string }) {
  useEffect(() => {
    void openPack(packId);
  }, [packId]);
  const now = opened.value;
  if (now.state === 'absent') return <Lost title={packWords.lost} hint={packWords.lostHint} />;
  if (now.state === 'noDefinition') return <Lost title={packWords.lost} hint={packWords.noDefinition} />;
  const here = route.value;
  if (now.state === 'opening' || here.screen !== 'pack' || now.session.packId !== packId) return <div class="screen" />;
  return <PackPlace session={now.session} place={here.place} id={here.id} />;
}

function Lost({ title, hint }: { title: string; hint: string }) {
  return (
    <Screen title={title} back={{ href: '#/', label: words.bench }}>
      <p>{hint}</p>
      <a class="button primary" href="#/">
        {packWords.toBench}
      </a>
    </Screen>
  );
}
