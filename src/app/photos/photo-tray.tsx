import { useRef, useState } from 'preact/hooks';
import { photoWords } from '../../text/photo-screens.ts';
import { photoProblemSentence } from '../../text/photos.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { nowMs } from '../clock.ts';
import { NotSaved } from '../parts/not-saved.tsx';
import type { PackSession } from '../state/pack-session.ts';
import { addPhoto, takingIn } from './add-photo.ts';
import { awaitPhoto, photoArrived } from './awaiting.ts';

interface PhotoTrayProps {
  session: PackSession;
  zone: string;
  itemId: string | null;
  /** Words of what the photo is for. */
  what: string;
  onAdded: (photoIds: string[]) => void;
  onClose: () => void;
}

/** Where a photo comes from: the camera, the camera with fine detail, or the phone. */
export function PhotoTray({ session, zone, itemId, what, onAdded, onClose }: PhotoTrayProps) {
  const camera = useRef<HTMLInputElement>(null);
  const phone = useRef<HTMLInputElement>(null);
  const detail = useRef(false);
  const [problems, setProblems] = useState<string[]>([]);

  async function open(input: HTMLInputElement | null, fine: boolean) {
    detail.current = fine;
    setProblems([]);
    await awaitPhoto({ packId: session.packId, zone, itemId, what, href: location.hash, sinceMs: nowMs.peek() });
    input?.click();
  }

  async function take(input: HTMLInputElement) {
    const files = [...(input.files ?? [])];
    input.value = '';
    const added: string[] = [];
    const wrong: string[] = [];
    let waits = false;
    for (const file of files) {
      const result = await addPhoto(session, file, { zone, itemId, detail: detail.current });
      if (result.ok) added.push(result.photoId);
      // It waits in the session: why, and the way to try again, stands here as on every screen.
      else if (result.problem === 'notSaved') waits = true;
      else if (result.problem === 'dropped') break;
      else if (result.problem !== 'cancelled') wrong.push(photoProblemSentence(result.problem, result.fileName));
    }
    await photoArrived();
    if (wrong.length > 0) setProblems(wrong);
    else if (added.length > 0 && !waits) onAdded(added);
  }

  const busy = takingIn.value;
  return (
    <Dialog title={photoWords.trayTitle} onClose={onClose}>
      <p class="muted">{what}</p>
      <NotSaved session={session} />
      {problems.map((sentence) => (
        <p key={sentence} class="notice" role="alert">
          {sentence}
        </p>
      ))}
      {busy ? (
        <div class="stack">
          <p role="status">{photoWords.takingIn(busy.fileName)}</p>
          <button type="button" class="button" onClick={busy.stop}>
            {photoWords.stop}
          </button>
        </div>
      ) : (
        <div class="stack">
          <button type="button" class="button primary" onClick={() => open(camera.current, false)}>
            {photoWords.camera}
          </button>
          <button type="button" class="button" onClick={() => open(camera.current, true)}>
            <span>
              {photoWords.cameraDetail}
              <br />
              <span class="small muted">{photoWords.cameraDetailHint}</span>
            </span>
          </button>
          <button type="button" class="button" onClick={() => open(phone.current, false)}>
            {photoWords.fromPhone}
          </button>
          <button type="button" class="button quiet" onClick={onClose}>
            {words.cancel}
          </button>
        </div>
      )}
      <input
        ref={camera}
        class="unseen"
        type="file"
        accept="image/*"
        capture="environment"
        tabIndex={-1}
        aria-hidden="true"
        data-photo="camera"
        onCancel={() => void photoArrived()}
        onChange={(event) => void take(event.currentTarget)}
      />
      <input
        ref={phone}
        class="unseen"
        type="file"
        accept="image/*"
        multiple
        tabIndex={-1}
        aria-hidden="true"
        data-photo="phone"
        onCancel={() => void photoArrived()}
        onChange={(event) => void take(event.currentTarget)}
      />
    </Dialog>
  );
}
