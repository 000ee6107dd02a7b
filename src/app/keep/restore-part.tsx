import { useEffect, useRef, useState } from 'preact/hooks';
import { bundleRefusals, nothingChanged, nothingTaken, whereInBundle } from '../../text/bundle.ts';
import { formatPercent } from '../../text/format-number.ts';
import { keepWords as say } from '../../text/keep.ts';
import { trayWords } from '../../text/tray.ts';
import { writeProblems } from '../../text/words.ts';
import { openedFiles, unreadCount } from '../opened-files.ts';
import { refreshBench } from '../state/bench.ts';
import { problemOf } from '../state/kept.ts';
import { vanished } from '../state/vanished.ts';
import type { GoodFile, Restored } from './restore-files.ts';
import { RestoredPart } from './restored-part.tsx';

type Now =
  | { now: 'rest' }
  | { now: 'checking' | 'takingIn'; fileName: string; doneFrac: number }
  | { now: 'said'; sentence: string };

interface Outcome {
  refused: { sentence: string; where: string }[];
  good: GoodFile[];
  restored: Restored | null;
}

/** Restore: all chosen files are checked whole before the first byte is written; then it lists what it did. */
export function RestorePart() {
  const input = useRef<HTMLInputElement>(null);
  const choose = useRef<HTMLButtonElement>(null);
  const abort = useRef<AbortController | null>(null);
  const [now, setNow] = useState<Now>({ now: 'rest' });
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  const isBusy = now.now === 'checking' || now.now === 'takingIn';
  useEffect(() => {
    // From the Bench, where records have vanished: the way leads straight here, once the heading has been announced.
    const timer = setTimeout(() => {
      if (location.hash !== '#/keep/restore') return;
      choose.current?.scrollIntoView({ block: 'center' });
      choose.current?.focus({ preventScroll: true });
    });
    return () => {
      clearTimeout(timer);
      abort.current?.abort();
    };
  }, []);

  const openedNames = openedFiles.value.map(({ name }) => name).join(', ');
  function takeOpened(): File[] {
    const files = openedFiles.value;
    openedFiles.value = [];
    unreadCount.value = 0;
    return files;
  }
  function watched(step: 'checking' | 'takingIn') {
    abort.current = new AbortController();
    const onProgress = (fileName: string, doneFrac: number) => setNow({ now: step, fileName, doneFrac });
    return { signal: abort.current.signal, onProgress };
  }
  async function restore(files: File[]) {
    if (files.length === 0) return;
    setOutcome(null);
    const { checkFiles } = await import('./restore-files.ts');
    const checking = watched('checking');
    try {
      const read = await checkFiles(files, checking);
      const good = read.flatMap((file) => (file.ok ? [{ fileName: file.fileName, bundle: file.bundle }] : []));
      const after = good.length === 0 ? nothingChanged : nothingTaken;
      const refused = read.flatMap((file) => {
        if (file.ok) return [];
        const sentence = say.refusedFile(file.fileName, `${bundleRefusals[file.refusal]} ${after}`);
        return [{ sentence, where: whereInBundle(file.detail) }];
      });
      setOutcome({ refused, good, restored: null });
      if (good.length > 0) await take({ refused, good }, false);
      else setNow({ now: 'rest' });
    } catch (error) {
      if (!checking.signal.aborted) console.error('restore: ended', error);
      const sentence = checking.signal.aborted ? say.stoppedChecking : writeProblems[problemOf(error)];
      setNow({ now: 'said', sentence });
    }
  }
  async function take({ refused, good }: Pick<Outcome, 'refused' | 'good'>, bringBackDeleted: boolean) {
    const { takeIn } = await import('./restore-files.ts');
    try {
      const restored = await takeIn(good, { bringBackDeleted, ...watched('takingIn') });
      setOutcome({ refused, good, restored });
      setNow({ now: 'rest' });
      if (restored.packs.length > 0) vanished.value = null;
      await refreshBench();
    } catch (error) {
      console.error('restore: ended', error);
      setNow({ now: 'said', sentence: writeProblems[problemOf(error)] });
    }
  }

  return (
    <section class="stack">
      <h2>{say.restore}</h2>
      <p class="muted small">{say.restoreLead}</p>
      {outcome?.refused.map(({ sentence, where }) => (
        <div key={sentence} class="notice stack" role="status">
          <p>{sentence}</p>
          <p class="small hash">{where}</p>
        </div>
      ))}
      {outcome?.restored && (
        <RestoredPart restored={outcome.restored} busy={isBusy} onBringBack={() => void take(outcome, true)} />
      )}
      {isBusy ? (
        <>
          <p role="status">
            {(now.now === 'checking' ? say.checkingShare : say.takingIn)(now.fileName, formatPercent(now.doneFrac))}
          </p>
          <button type="button" class="button" onClick={() => abort.current?.abort()}>
            {say.stop}
          </button>
        </>
      ) : (
        <>
          {now.now === 'said' && (
            <p class="notice calm" role="status">
              {now.sentence}
            </p>
          )}
          {unreadCount.value > 0 && (
            <p class="notice calm" role="status">
              {trayWords.openedUnread(unreadCount.value)}
            </p>
          )}
          {openedFiles.value.length > 0 && (
            <div class="notice calm stack" role="status">
              <p>{trayWords.opened(openedNames)}</p>
              <button type="button" class="button primary" onClick={() => void restore(takeOpened())}>
                {trayWords.takeIn(openedNames)}
              </button>
            </div>
          )}
          <button ref={choose} type="button" class="button" onClick={() => input.current?.click()}>
            {say.choose}
          </button>
        </>
      )}
      <input
        ref={input}
        class="unseen"
        type="file"
        accept=".zip,application/zip"
        multiple
        tabIndex={-1}
        aria-label={say.choose}
        data-restore
        onChange={(event) => {
          const files = [...(event.currentTarget.files ?? [])];
          event.currentTarget.value = '';
          void restore(files);
        }}
      />
    </section>
  );
}
