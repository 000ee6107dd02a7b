import { stampMs } from '../../record/stamp-ms.ts';
import type { Manifest } from '../../schema/bundle.ts';
import { randomId } from '../open-store.ts';
import type { Store } from '../store.ts';
import { MAX_PART_BYTES } from './bundle-limits.ts';
import { readPath } from './bundle-paths.ts';
import { type GatheredPack, gatherPack, groupCountOf, type LeftOut, type PlannedFile } from './gather-pack.ts';
import { planParts } from './plan-parts.ts';

export interface PlanBundle {
  store: Store;
  packIds: readonly string[] | 'all';
  appVersion: string;
  /** Demo packs stay out unless asked for. */
  withDemo?: boolean;
  /** Share of the photos, logs, sealed sheets and voice notes that have been looked at, 0–1. */
  onProgress?(doneFrac: number): void;
  signal?: AbortSignal;
  /** For tests. */
  maxPartBytes?: number;
}

/** A bundle before a byte of it is written: how many parts, how big, what cannot go in. */
export interface BundlePlan {
  parts: PartPlan[];
  leftOut: LeftOut[];
}

/** One part, which `writePart` writes. Holds the entries and the places of the rest, not the bytes. */
export interface PartPlan {
  fileName: string;
  part: number;
  parts: number;
  packIds: string[];
  /** Most that it can take; a few per mille more than it will. */
  boundBytes: number;
  /** To hand to `store.noteBackup` once the file has been handed over. */
  hashes: string[];
  facts: Pick<Manifest, 'bundleId' | 'newest' | 'appVersion'>;
  files: PlannedFile[];
}

/**
 * Looks at everything the packs hold and lays it out over parts that each stand alone. No part comes of no packs.
 *
 * Throws  the signal's reason when cancelled; whatever reading the database throws.
 */
export async function planBundle(options: PlanBundle): Promise<BundlePlan> {
  const { store, signal, onProgress } = options;
  const packIds = await wantedPacks(options);
  let stepCount = 0;
  for (const packId of packIds) stepCount += groupCountOf(packId, await store.entriesOf(packId));
  let stepsDone = 0;
  const onGroup = () => {
    signal?.throwIfAborted();
    stepsDone += 1;
    onProgress?.(Math.min(stepsDone / Math.max(stepCount, 1), 1));
  };
  const packs: GatheredPack[] = [];
  const leftOut: LeftOut[] = [];
  for (const packId of packIds) {
    signal?.throwIfAborted();
    const pack = await gatherPack(store, packId, { leftOut, onGroup });
    if (pack !== null) packs.push(pack);
  }
  const newest = packs.map(({ newestAt }) => newestAt).sort().at(-1); // biome-ignore format: one line
  if (newest === undefined) return { parts: [], leftOut };
  const facts = { bundleId: randomId(), newest, appVersion: options.appVersion };
  const planned = planParts(packs, options.maxPartBytes ?? MAX_PART_BYTES);
  const parts = planned.map(({ packIds: within, boundBytes, files }, i): PartPlan => {
    const which = { part: i + 1, parts: planned.length };
    const hashes = [...files.keys()].flatMap(hashIn);
    return {
      ...which,
      fileName: fileNameOf(facts, which),
      packIds: within,
      boundBytes,
      hashes,
      facts,
      files: [...files.values()],
    };
  });
  return { parts, leftOut };
}

async function wantedPacks({ store, packIds, withDemo = false }: PlanBundle): Promise<string[]> {
  const cards = (await store.cards()).filter(({ demo }) => withDemo || !demo);
  const present = cards.map(({ packId }) => packId);
  return packIds === 'all' ? present : present.filter((packId) => packIds.includes(packId));
}

/** A thumbnail carries its photo's hash, and does not stand for it: the photo itself may be what cannot go in. */
function hashIn(path: string): string[] {
  const place = readPath(path);
  return place?.kind === 'bytes' && place.shelf !== 'thumbs' ? [place.sha256] : [];
}

/** Day of the newest entry (UTC), six digits that the parts of one bundle share, and which part it is. */
function fileNameOf(
  { newest, bundleId }: PartPlan['facts'],
  { part, parts }: Record<'part' | 'parts', number>,
): string {
  const day = new Date(stampMs(newest)).toISOString().slice(0, 10);
  const which = parts === 1 ? '' : `-part-${part}-of-${parts}`;
  return `underlid-${day}-${bundleId.slice(0, 6)}${which}.zip`;
}
