import './tray.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import { dropShared, keepShared, sharedFile } from '../../storage/shared-in.ts';
import { trayWords as say } from '../../text/tray.ts';
import { words } from '../../text/words.ts';
import { Dialog } from '../../ui/dialog.tsx';
import { Screen } from '../../ui/screen.tsx';
import { openedFiles } from '../opened-files.ts';
import { takingIn } from '../photos/add-photo.ts';
import { goTo } from '../route.ts';
import { PutIntoPack } from './put-into-pack.tsx';
import { isBundle, lookInTray, waiting } from './waiting.ts';
import { WaitingPhoto } from './waiting-photo.tsx';

/** What other apps shared in: photos to be put into a pack, bundles to be restored. */
export function TrayPage() {
  const input = useRef<HTMLInputElement>(null);
  const [unticked, setUnticked] = useState<ReadonlySet<string>>(new Set());
  const [said, setSaid] = useState<string[]>([]);
  const [asking, setAsking] = useState(false);
  useEffect(() => {
    void lookInTray();
    if (location.hash === '#/tray/full') setSaid([say.full]);
  }, []);
  const photos = waiting.value.filter((file) => !isBundle(file));
  const bundles = waiting.value.filter(isBundle);
  const ticked = photos.filter(({ id }) => !unticked.has(id));
  const busy = takingIn.value;

  async function add(files: File[]) {
    try {
      await keepShared(files, Date.now());
      setSaid([]);
    } catch (error) {
      console.error('tray: not kept', error);
      setSaid([say.notKept]);
    }
    await lookInTray();
  }
  async function takeOut() {
    setAsking(false);
    for (const { id } of ticked) await dropShared(id);
    await lookInTray();
  }
  /** Keep checks it whole. Here it stays until it is taken out, so that a restore that fails can be tried again. */
  async function restore(id: string) {
    const file = await sharedFile(id);
    if (file === null) return lookInTray();
    openedFiles.value = [file];
    goTo('#/keep/restore');
  }
  function tick(id: string, on: boolean) {
    const others = [...unticked].filter((one) => one !== id);
    setUnticked(new Set(on ? others : [...others, id]));
  }

  return (
    <Screen
      title={say.title}
      back={{ href: '#/', label: words.bench }}
      dock={
        <button type="button" class="button" onClick={() => input.current?.click()}>
          {say.add}
        </button>
      }
    >
      <p class="muted">{say.lead}</p>
      {said.map((sentence) => (
        <p key={sentence} class="notice calm" role="status">
          {sentence}
        </p>
      ))}
      {waiting.value.length === 0 && (
        <>
          <p>{say.none}</p>
          <p class="muted">{say.noneHint}</p>
        </>
      )}
      {photos.length > 0 && (
        <ul class="tray">
          {photos.map((file) => (
            <li key={file.id}>
              <WaitingPhoto file={file} ticked={!unticked.has(file.id)} onTick={(on) => tick(file.id, on)} />
            </li>
          ))}
        </ul>
      )}
      {busy && <p role="status">{say.busy(busy.fileName)}</p>}
      {photos.length > 0 && <PutIntoPack files={ticked} onSaid={setSaid} />}
      {ticked.length > 0 && !busy && (
        <button type="button" class="button quiet" onClick={() => setAsking(true)}>
          {say.takeOut}
        </button>
      )}
      {bundles.length > 0 && (
        <section class="stack">
          <h2>{say.bundles}</h2>
          {bundles.map(({ id, name }) => (
            <div key={id} class="row">
              <button type="button" class="button quiet" onClick={() => void dropShared(id).then(lookInTray)}>
                {say.takeOutBundle}
              </button>
              <button type="button" class="button" onClick={() => void restore(id)}>
                {say.restore(name)}
              </button>
            </div>
          ))}
        </section>
      )}
      <input
        ref={input}
        class="unseen"
        type="file"
        accept="image/*"
        multiple
        tabIndex={-1}
        aria-label={say.add}
        data-tray
        onChange={(event) => {
          const files = [...(event.currentTarget.files ?? [])];
          event.currentTarget.value = '';
          if (files.length > 0) void add(files);
        }}
      />
      {asking && (
        <Dialog title={say.takeOut} onClose={() => setAsking(false)}>
          <p>{say.takeOutAsk(ticked.length)}</p>
          <div class="row">
            <button type="button" class="button" onClick={() => setAsking(false)}>
              {words.cancel}
            </button>
            <button type="button" class="button primary" onClick={() => void takeOut()}>
              {say.takeOutNow}
            </button>
          </div>
        </Dialog>
      )}
    </Screen>
  );
}
