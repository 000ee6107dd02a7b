import { useState } from 'preact/hooks';
import { photoWords as say } from '../../text/photo-screens.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { goTo, hrefTo } from '../route.ts';
import type { PackSession } from '../state/pack-session.ts';
import { type AwaitedPhoto, droppedPhoto, photoArrived } from './awaiting.ts';
import { PhotoTray } from './photo-tray.tsx';

/** Says that the phone dropped the page while the camera was open, and offers to take that very photo again. */
export function DroppedPhotoDialog({ session }: { session: PackSession }) {
  // Taking it again clears what was awaited; the tray goes on with this copy, so that it can still say what is wrong.
  const [again, setAgain] = useState<AwaitedPhoto | null>(null);
  const dropped = again ?? droppedPhoto.value;
  if (!dropped || dropped.packId !== session.packId) return null;
  const close = () => {
    setAgain(null);
    void photoArrived();
  };
  if (again) {
    return (
      <PhotoTray
        session={session}
        zone={dropped.zone}
        itemId={dropped.itemId}
        what={dropped.what}
        onClose={close}
        onAdded={([first]) => {
          setAgain(null);
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
        <button type="button" class="button primary" onClick={() => setAgain(dropped)}>
          {say.takeAgain}
        </button>
      </div>
    </Dialog>
  );
}
