import { useEffect, useRef, useState } from 'preact/hooks';
import type { SavedPart } from '../../storage/bundle/save-bundle.ts';
import { formatBytes } from '../../text/format-bytes.ts';
import { formatPercent } from '../../text/format-number.ts';
import { keepWords as say } from '../../text/keep.ts';
import { APP_VERSION } from '../app-version.ts';
import { saveFile } from '../save-file.ts';
import { cards } from '../state/bench.ts';
import { store } from '../state/store.ts';

type Progress =
  | { now: 'rest' }
  | { now: 'working'; doneFrac: number }
  | { now: 'part'; part: SavedPart }
  | { now: 'said'; sentence: string };

/** Save everything as a bundle: part after part, each handed over before the next is made. */
export function BackupPart() {
  const [progress, setProgress] = useState<Progress>({ now: 'rest' });
  const [unsaved, setUnsaved] = useState<Unsaved | null>(null);
  const abort = useRef<AbortController | null>(null);
  const parts = useRef<AsyncGenerator<SavedPart, void> | null>(null);
  const own = cards.value.filter(({ demo }) => !demo);
  const hasOwn = own.length > 0;
  const hasPhotos = own.some(({ photoCount }) => photoCount > 0);
  useEffect(() => {
    void unsavedNow().then(setUnsaved);
    return () => abort.current?.abort();
  }, []);

  async function begin() {
    const { saveBundle } = await import('../../storage/bundle/save-bundle.ts');
    abort.current = new AbortController();
    parts.current = saveBundle({
      store: store(),
      packIds: 'all',
      appVersion: APP_VERSION,
      signal: abort.current.signal,
      onProgress: (doneFrac) => setProgress({ now: 'working', doneFrac }),
    });
    await nextPart();
  }
  async function nextPart() {
    setProgress({ now: 'working', doneFrac: 0 });
    try {
      const next = await parts.current?.next();
      if (next && !next.done) setProgress({ now: 'part', part: next.value });
      else setProgress({ now: 'said', sentence: say.savedAll });
    } catch (error) {
      const stopped = abort.current?.signal.aborted === true;
      if (!stopped) console.error('bundle: not made', error);
      setProgress({ now: 'said', sentence: stopped ? say.stopped : say.backupFailed });
    }
  }
  async function handOver(part: SavedPart) {
    saveFile(part.blob, part.fileName);
    await store().noteBackup(part.hashes);
    setUnsaved(await unsavedNow());
    if (part.part === part.parts) {
      await nextPart();
    }
  }

  return (
    <section class="stack">
      <h2>{say.backup}</h2>
      <p class="muted small">{hasOwn ? say.backupLead : say.nothingToSave}</p>
      {unsaved !== null && unsaved.photos + unsaved.logs > 0 ? (
        <p class="notice">{say.noBackup(unsaved.photos, unsaved.logs)}</p>
      ) : (
        hasPhotos && unsaved !== null && <p class="small">{say.allBackedUp}</p>
      )}
      {progress.now === 'working' ? (
        <>
          <p role="status">{say.saving(formatPercent(progress.doneFrac))}</p>
          <button type="button" class="button" onClick={() => abort.current?.abort()}>
            {say.stop}
          </button>
        </>
      ) : progress.now === 'part' ? (
        <PartReady part={progress.part} onSave={() => void handOver(progress.part)} onNext={() => void nextPart()} />
      ) : (
        <>
          {progress.now === 'said' && (
            <p class="notice calm" role="status">
              {progress.sentence}
            </p>
          )}
          <button type="button" class="button" disabled={!hasOwn} onClick={() => void begin()}>
            {say.save}
          </button>
        </>
      )}
    </section>
  );
}

interface Unsaved {
  photos: number;
  logs: number;
}

async function unsavedNow(): Promise<Unsaved> {
  const [photos, logs] = await Promise.all([store().photosInNoBackup(), store().logsInNoBackup()]);
  return { photos, logs };
}

function PartReady({ part, onSave, onNext }: { part: SavedPart; onSave: () => void; onNext: () => void }) {
  return (
    <>
      <p role="status">{say.partReady(part.part, part.parts, formatBytes(part.blob.size))}</p>
      {part.leftOut.length > 0 && (
        <div class="notice small">
          <p>{say.leftOut(part.leftOut.length)}</p>
          <ul>
            {part.leftOut.map(({ what }) => (
              <li key={what}>{what}</li>
            ))}
          </ul>
        </div>
      )}
      <button type="button" class="button primary" onClick={onSave}>
        {say.savePart(part.fileName)}
      </button>
      {part.part < part.parts && (
        <button type="button" class="button" onClick={onNext}>
          {say.nextPart}
        </button>
      )}
    </>
  );
}
