import { useEffect, useRef, useState } from 'preact/hooks';
import type { BundlePlan, PartPlan } from '../../storage/bundle/plan-bundle.ts';
import type { BackupNote } from '../../storage/store.ts';
import { formatMoment } from '../../text/format-day.ts';
import { formatPercent } from '../../text/format-number.ts';
import { keepWords as say } from '../../text/keep.ts';
import { APP_VERSION } from '../app-version.ts';
import { utcOffsetMinutes } from '../clock.ts';
import { saveFile } from '../save-file.ts';
import { cards, refreshBench } from '../state/bench.ts';
import { store } from '../state/store.ts';
import { canPickFile, type FileToWrite, pickFileToWrite } from './file-to-write.ts';
import { MadePart } from './made-part.tsx';
import { PlanLines } from './plan-lines.tsx';

type Now =
  | { now: 'rest' }
  | { now: 'busy'; words(percent: string): string; doneFrac: number }
  /** Where the browser has no save picker: the part is made, then handed over by a tap. */
  | { now: 'made'; part: PartPlan; blob: Blob; handedOver: boolean };

/** Save everything as a bundle: planned first, then part after part, each written before the next is begun. */
export function BackupPart() {
  const [now, setNow] = useState<Now>({ now: 'rest' });
  const [plan, setPlan] = useState<BundlePlan | null>(null);
  const [savedParts, setSavedParts] = useState<readonly number[]>([]);
  const [said, setSaid] = useState<string | null>(null);
  const [standing, setStanding] = useState<Standing | null>(null);
  const abort = useRef<AbortController | null>(null);
  const own = cards.value.filter(({ demo }) => !demo);
  const hasPhotos = own.some(({ photoCount }) => photoCount > 0);
  useEffect(() => void standingNow().then(setStanding), [cards.value]);
  useEffect(() => () => abort.current?.abort(), []);

  /** Runs one stretch of work with its progress and Stop; says what went wrong, and that nothing is left of it. */
  async function busy(
    { words, stopped, failed }: { words(percent: string): string; stopped: string; failed: string },
    work: (watched: { signal: AbortSignal; onProgress(doneFrac: number): void }) => Promise<void>,
  ) {
    const controller = new AbortController();
    abort.current = controller;
    const onProgress = (doneFrac: number) => setNow({ now: 'busy', words, doneFrac });
    onProgress(0);
    setSaid(null);
    try {
      await work({ signal: controller.signal, onProgress });
    } catch (error) {
      if (!controller.signal.aborted) console.error('bundle: not saved', error);
      setSaid(controller.signal.aborted ? stopped : failed);
      setNow({ now: 'rest' });
    }
  }
  async function begin() {
    setSavedParts([]);
    let planned: BundlePlan | null = null;
    await busy({ words: say.saving, stopped: say.stopped, failed: say.backupFailed }, async (watched) => {
      const { planBundle } = await import('../../storage/bundle/plan-bundle.ts');
      planned = await planBundle({ store: store(), packIds: 'all', appVersion: APP_VERSION, ...watched });
      setPlan(planned);
      setNow({ now: 'rest' });
    });
    const [first] = (planned as BundlePlan | null)?.parts ?? [];
    if (first && !canPickFile()) await make(first);
  }
  /** Called within a tap, so that the browser lets the picker open. */
  async function save(part: PartPlan) {
    let file: FileToWrite | 'dismissed' | 'noPicker';
    try {
      file = await pickFileToWrite(part.fileName);
    } catch (error) {
      console.error('bundle: no file to write', error);
      setSaid(say.partNotSaved);
      return;
    }
    if (file === 'noPicker') await make(part);
    else if (file !== 'dismissed') await stream(part, file);
  }
  async function stream(part: PartPlan, file: FileToWrite) {
    const words = (percent: string) => say.writing(file.name, percent);
    await busy({ words, stopped: say.stoppedPart, failed: say.partNotSaved }, async (watched) => {
      try {
        const { writePart } = await import('../../storage/bundle/write-part.ts');
        await writePart(part, file, watched);
        await file.close();
      } catch (error) {
        await file.discard().catch((why: unknown) => console.warn('bundle: file not discarded', why));
        throw error;
      }
      await handedOver(part, file.name);
      setNow({ now: 'rest' });
    });
  }
  async function make(part: PartPlan) {
    const words = (percent: string) => say.making(part.part, part.parts, percent);
    await busy({ words, stopped: say.stoppedPart, failed: say.backupFailed }, async (watched) => {
      const [{ writePart }, { blobSink }] = await Promise.all([
        import('../../storage/bundle/write-part.ts'),
        import('../../storage/bundle/zip-writer.ts'),
      ]);
      const sink = blobSink();
      await writePart(part, sink, watched);
      setNow({ now: 'made', part, blob: sink.blob(), handedOver: false });
    });
  }
  async function handOver(part: PartPlan, blob: Blob) {
    saveFile(blob, part.fileName);
    await handedOver(part, part.fileName);
    setNow(part.part === part.parts ? { now: 'rest' } : { now: 'made', part, blob, handedOver: true });
  }
  async function handedOver(part: PartPlan, fileName: string) {
    let isNoted = true;
    try {
      await store().noteBackup(part.hashes, { fileName, packCount: part.packIds.length });
    } catch (error) {
      // The file is out of the house all the same: only the count of what is in no backup stays as it was.
      console.warn('bundle: not noted on the phone', error);
      isNoted = false;
    }
    await refreshBench();
    setStanding(await standingNow());
    const saved = [...new Set([...savedParts, part.part])];
    setSavedParts(saved);
    if (!isNoted) setSaid(say.savedNotNoted);
    if (saved.length < part.parts) return;
    setPlan(null);
    setSaid(isNoted ? say.savedAll : say.savedNotNoted);
  }

  const next = plan?.parts.find(({ part }) => !savedParts.includes(part));
  return (
    <section class="stack">
      <h2>{say.backup}</h2>
      <p class="muted small">{own.length > 0 ? say.backupLead : say.nothingToSave}</p>
      {standing && standing.photos + standing.logs + standing.voices > 0 ? (
        <p class="notice">{say.noBackup(standing)}</p>
      ) : (
        hasPhotos && standing && <p class="small">{say.allBackedUp}</p>
      )}
      {standing?.last && <p class="small hash">{lastLine(standing.last)}</p>}
      {plan && <PlanLines plan={plan} savedParts={savedParts} />}
      {said !== null && now.now !== 'busy' && (
        <p class="notice calm" role="status">
          {said}
        </p>
      )}
      {now.now === 'busy' ? (
        <>
          <p role="status">{now.words(formatPercent(now.doneFrac))}</p>
          <button type="button" class="button" onClick={() => abort.current?.abort()}>
            {say.stop}
          </button>
        </>
      ) : now.now === 'made' ? (
        <MadePart {...now} onSave={() => void handOver(now.part, now.blob)} onNext={() => next && void make(next)} />
      ) : next ? (
        <button type="button" class="button primary" onClick={() => void save(next)}>
          {say.savePart(next.fileName)}
        </button>
      ) : (
        <button type="button" class="button" disabled={own.length === 0} onClick={() => void begin()}>
          {say.save}
        </button>
      )}
    </section>
  );
}

/** What is in no backup, and which was the last. */
interface Standing {
  photos: number;
  logs: number;
  voices: number;
  last: BackupNote | null;
}

async function standingNow(): Promise<Standing> {
  const [photos, logs, voices, last] = await Promise.all([
    store().photosInNoBackup(),
    store().logsInNoBackup(),
    store().voicesInNoBackup(),
    store().lastBackup(),
  ]);
  return { photos, logs, voices, last };
}

function lastLine({ fileName, at }: BackupNote): string {
  const atMs = Date.parse(at);
  return say.lastBackup(fileName, formatMoment(atMs, utcOffsetMinutes(atMs)));
}
