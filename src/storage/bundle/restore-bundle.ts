import type { Entry } from '../../schema/entry.ts';
import type { PackCard } from '../../schema/pack-card.ts';
import type { Merged, Store, WriteProblem } from '../store.ts';
import type { VerifiedPart } from './read-bundle.ts';

export interface RestoreOptions {
  /** Whether what was deleted here after the backup comes back, with new stamps. First restore without, then ask. */
  bringBackDeleted: boolean;
  /** The pack's card from all its entries; the definitions it may need are in the verified part. */
  cardOf(entries: Entry[]): PackCard;
  onProgress?(doneFrac: number): void;
  signal?: AbortSignal;
}

export interface RestoreReport {
  /** Packs that were merged, in the bundle's order. */
  packs: (Merged & { packId: string })[];
  /** The pack at which it stopped, if it did; packs before it are in, this and later ones are as they were. */
  stopped: { packId: string; problem: WriteProblem; detail: string } | null;
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
  for (const { packId, entries } of bundle.packs) {
    signal?.throwIfAborted();
    const { bytes, definitions } = bundle;
    const result = await store.mergeIn({ packId, entries, bytes, definitions, cardOf, bringBackDeleted });
    if (!result.ok) {
      const { problem, detail } = result;
      return { ...report, stopped: { packId, problem, detail } };
    }
    report.packs.push({ packId, ...result.merged });
    onProgress?.(report.packs.length / bundle.packs.length);
  }
  return report;
}
