import type { Entry } from '../../schema/entry.ts';
import type { PackCard } from '../../schema/pack-card.ts';
import type { IncomingBytes, Merged, Store, WriteProblem } from '../store.ts';
import type { VerifiedPart } from './read-bundle.ts';
import { RefusedBundle } from './refused-bundle.ts';

export interface RestoreOptions {
  /** Whether what was deleted here after the backup comes back, with new stamps. First restore without, then ask. */
  bringBackDeleted: boolean;
  /** The pack's card from all its entries; the definitions it may need are in the verified part. */
  cardOf(entries: Entry[]): PackCard;
  /** Share of the work done, 0–1. */
  onProgress?(doneFrac: number): void;
  /** Stops before the next file is read; the pack in hand is then as it was. */
  signal?: AbortSignal;
}

/** `fileChanged`: the file is not any more what was checked. `byHand`: the signal. */
export type StopReason = WriteProblem | 'fileChanged' | 'byHand';

export interface RestoreReport {
  /** Packs that were merged, in the bundle's order. */
  packs: (Merged & { packId: string })[];
  /** The pack at which it stopped, if it did; packs before it are in, this and later ones are as they were. */
  stopped: { packId: string; problem: StopReason; detail: string } | null;
  skipped: string[];
}

/** Merges a checked part by stamp, pack by pack. Doing it again changes nothing, so it can be taken up after a stop. */
export async function restoreBundle(
  store: Store,
  bundle: VerifiedPart,
  options: RestoreOptions,
): Promise<RestoreReport> {
  const report: RestoreReport = { packs: [], stopped: null, skipped: bundle.skipped };
  const { bringBackDeleted, cardOf, onProgress, signal } = options;
  const { definitions } = bundle;
  const reading = watchedBytes(bundle.bytes, options);
  for (const { packId, entries } of bundle.packs) {
    if (signal?.aborted) return { ...report, stopped: { packId, problem: 'byHand', detail: '' } };
    const result = await store.mergeIn({
      packId,
      entries,
      bytes: reading.bytes,
      definitions,
      cardOf,
      bringBackDeleted,
    });
    if (!result.ok) {
      return { ...report, stopped: { packId, problem: reading.problem() ?? result.problem, detail: result.detail } };
    }
    report.packs.push({ packId, ...result.merged });
  }
  onProgress?.(1);
  return report;
}

/** The bytes with progress told, and with what went wrong while reading kept apart from what went wrong while writing. */
function watchedBytes(all: readonly IncomingBytes[], { onProgress, signal }: RestoreOptions) {
  const totalBytes = all.reduce((sum, { byteCount }) => sum + byteCount, 0);
  let doneBytes = 0;
  let problem: 'fileChanged' | 'byHand' | null = null;
  const bytes = all.map(
    (one): IncomingBytes => ({
      ...one,
      read: async () => {
        if (signal?.aborted) problem = 'byHand';
        signal?.throwIfAborted();
        try {
          const found = await one.read();
          doneBytes += one.byteCount;
          onProgress?.(Math.min(1, doneBytes / totalBytes));
          return found;
        } catch (error) {
          if (error instanceof RefusedBundle) problem = 'fileChanged';
          throw error;
        }
      },
    }),
  );
  return { bytes, problem: () => problem };
}
