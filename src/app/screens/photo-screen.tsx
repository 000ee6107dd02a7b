import { useState } from 'preact/hooks';
import { photoWords as say } from '../../text/photo-screens.ts';
import { words } from '../../text/words.ts';
import { Screen } from '../../ui/screen.tsx';
import { AboutPhoto } from '../photos/about-photo.tsx';
import { DrawOnPhoto } from '../photos/draw-on-photo.tsx';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';

/**
 * One photo. `id` is the photo's id, and after a slash what it was taken for: an item's id, or `new` for a photo taken
 * first. Then the callouts come first; afterwards the item, or what is to be said about the photo.
 */
export function PhotoScreen({ session, id }: { session: PackSession; id: string }) {
  const [photoId = '', purpose = ''] = id.split('/');
  const [drawing, setDrawing] = useState(purpose !== '');
  const record = session.record.value;
  const photo = record.photos.find((one) => one.id === photoId);
  if (!photo) {
    return (
      <Screen title={say.lost} back={{ href: hrefTo(record.packId, 'photos'), label: say.photosOf }}>
        <a class="button" href={hrefTo(record.packId)}>
          {words.back}
        </a>
      </Screen>
    );
  }
  const itemId = purpose === '' || purpose === 'new' ? null : purpose;
  function done() {
    if (itemId !== null) goTo(hrefTo(record.packId, 'item', itemId), { replace: true });
    else if (purpose === 'new') goTo(hrefTo(record.packId, 'photo', photoId), { replace: true });
    else setDrawing(false);
  }
  return drawing ? (
    <DrawOnPhoto session={session} photo={photo} itemId={itemId} onDone={done} />
  ) : (
    <AboutPhoto session={session} photo={photo} onDraw={() => setDrawing(true)} />
  );
}
