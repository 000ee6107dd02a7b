import { useState } from 'preact/hooks';
import { photoWords as say } from '../../text/photo-screens.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { droppedPhoto, photoArrived } from './awaiting.ts';
import { PhotoTray } from './photo-tray.tsx';

/** Says that the phone dropped the page while the camera was open, and offers to take that very photo again. */
export function DroppedPhotoDialog({ session }: { session: PackSession }) {
  const [again, setAgain] = useState(false);
  const dropped = droppedPhoto.value;
  if (!dropped || dropped.packId !== session.packId) return null;
  const close = () => void photoArrived();
  if (again) {
    return (
      <PhotoTray
        session={session}
        zone={dropped.zone}
        itemId={dropped.itemId}
        what={dropped.what}
        onClose={close}
        onAdded={([first]) => {
          if (first !== undefined) goTo(hrefTo(session.packId, 'photo', `${first}/${dropped.itemId ?? 'new'}`));
        }}
      />
    );
  }
  return (
    <Dialog title={say.droppedTitle} onClose={close}>
      <p>{say.dropped(dropped.what)}</p>
      <div class="row">
        <button type="button" class="button" onClick={close}>
          {say.dismiss}
        </button>
        <button type="button" class="button primary" onClick={() => setAgain(true)}>
          {say.takeAgain}
        </button>
      </div>
    </Dialog>
  );
}
