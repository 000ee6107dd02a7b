import { useEffect } from 'preact/hooks';
import { packWords } from '../text/bench.ts';
import { UnderHead } from '../ui/screen.tsx';
import { ClosedLine } from './closing/closed-line.tsx';
import { PackPlace } from './pack-place.tsx';
import { Lost } from './parts/lost.tsx';
import { DroppedPhotoDialog } from './photos/dropped-photo-dialog.tsx';
import { route } from './route.ts';
import { TakeLine } from './shoot-clock/take-line.tsx';
import { opened, openPack } from './state/open-pack.ts';

/** Opens the pack of the address, then shows its place; says so when it is not here. */
export function OpenPackScreen({ packId }: { packId: string }) {
  useEffect(() => {
    void openPack(packId);
  }, [packId]);
  const now = opened.value;
  if (now.state === 'absent') return <Lost title={packWords.lost} hint={packWords.lostHint} />;
  if (now.state === 'noDefinition') return <Lost title={packWords.lost} hint={packWords.noDefinition} />;
  const here = route.value;
  if (now.state === 'opening' || here.screen !== 'pack' || now.session.packId !== packId) return <div class="screen" />;
  if (!now.session.record.value.here) return <Lost title={packWords.isAway} hint={packWords.isAwayHint} />;
  return (
    <>
      <UnderHead.Provider
        value={
          <>
            {here.place !== 'sheet' && <ClosedLine session={now.session} />}
            {here.place !== 'shoot-clock' && <TakeLine session={now.session} />}
          </>
        }
      >
        <PackPlace session={now.session} place={here.place} id={here.id} />
      </UnderHead.Provider>
      <DroppedPhotoDialog session={now.session} />
    </>
  );
}
