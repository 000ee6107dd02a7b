import { useRef, useState } from 'preact/hooks';
import type { VerifiedPart } from '../../storage/bundle/read-bundle.ts';
import type { Merged } from '../../storage/store.ts';
import { keepWords as say } from '../../text/keep.ts';
import { writeProblems } from '../../text/words.ts';
import { refreshBench } from '../state/bench.ts';
import { forgetOpenPack } from '../state/open-pack.ts';
import { vanished } from '../state/vanished.ts';

interface Outcome {
  fileName: string;
  good: boolean;
  lines: string[];
  /** With entries that were deleted here after the backup: the checked part, to be merged again on request. */
  deleted: { bundle: VerifiedPart; count: number } | null;
}

/** Restore: every chosen file is checked whole before a byte is written, and says what it did. */
export function RestorePart() {
  const input = useRef<HTMLInputElement>(null);
  const [checking, setChecking] = useState<string | null>(null);
  const [outcomes, setOutcomes] = useState<Outcome[]>([]);

  async function restore(files: File[]) {
    const { restoreFile } = await import('./restore-file.ts');
    for (const file of files) {
      setChecking(file.name);
      const restored = await restoreFile(file);
      const outcome = restored.ok
        ? outcomeOf(file.name, restored)
        : { fileName: file.name, good: false, lines: [say.refusedFile(file.name, restored.sentence)], deleted: null };
      setOutcomes((before) => [...before, outcome]);
    }
    setChecking(null);
    vanished.value = null;
    await refreshBench();
  }
  async function bringBack(outcome: Outcome) {
    if (!outcome.deleted) return;
    const { mergeBundle } = await import('./restore-file.ts');
    const restored = await mergeBundle(outcome.deleted.bundle, true);
    setOutcomes((before) =>
      before.map((other) => (other === outcome && restored.ok ? outcomeOf(outcome.fileName, restored) : other)),
    );
    await refreshBench();
  }

  return (
    <section class="stack">
      <h2>{say.restore}</h2>
      <p class="muted small">{say.restoreLead}</p>
      {checking && <p role="status">{say.checking(checking)}</p>}
      {outcomes.map((outcome, index) => (
        <div key={index} class="notice calm stack" role="status">
          {outcome.lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
          {outcome.deleted && (
            <>
              <p>{say.deletedHere(outcome.deleted.count)}</p>
              <button type="button" class="button" onClick={() => void bringBack(outcome)}>
                {say.bringBack}
              </button>
            </>
          )}
        </div>
      ))}
      <button type="button" class="button" disabled={checking !== null} onClick={() => input.current?.click()}>
        {say.choose}
      </button>
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

function outcomeOf(
  fileName: string,
  restored: Extract<Awaited<ReturnType<typeof import('./restore-file.ts').mergeBundle>>, { ok: true }>,
): Outcome {
  const { report, bundle, labels } = restored;
  const lines = report.packs.map((pack) => {
    forgetOpenPack(pack.packId);
    return packLine(labels.get(pack.packId) ?? pack.packId, pack);
  });
  if (report.stopped) {
    const label = labels.get(report.stopped.packId) ?? report.stopped.packId;
    lines.push(say.stoppedAt(label, writeProblems[report.stopped.problem]));
  }
  for (const pack of report.packs) {
    const { missingPhotos, missingLogs } = pack;
    if (missingPhotos.length + missingLogs.length > 0) {
      const label = labels.get(pack.packId) ?? pack.packId;
      lines.push(say.packMissing(label, missingPhotos.length, missingLogs.length));
    }
  }
  const count = report.packs.reduce((sum, pack) => sum + pack.deletedHere.length, 0);
  const good = report.stopped === null;
  return {
    fileName,
    good,
    lines: good ? [say.restored(fileName), ...lines] : lines,
    deleted: count > 0 ? { bundle, count } : null,
  };
}

function packLine(label: string, pack: Merged): string {
  if (pack.added) return say.packAdded(label);
  if (pack.written.length === 0) return say.packSame(label);
  return say.packMerged(label, pack.written.length, pack.newerHere.length);
}
