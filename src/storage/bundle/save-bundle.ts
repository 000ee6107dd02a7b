import { stampMs } from '../../record/stamp-ms.ts';
import { BUNDLE_FORMAT, type Manifest } from '../../schema/bundle.ts';
import { SCHEMA_VERSION } from '../../schema/schema-version.ts';
import { randomId } from '../open-store.ts';
import type { Store } from '../store.ts';
import { MAX_PART_BYTES } from './bundle-limits.ts';
import { MANIFEST_PATH, readPath } from './bundle-paths.ts';
import { type GatheredPack, gatherPack, groupCountOf, type LeftOut } from './gather-pack.ts';
import { type PlannedPart, planParts } from './plan-parts.ts';
import { zipWriter } from './zip-writer.ts';

export interface SaveBundle {
  store: Store;
  packIds: readonly string[] | 'all';
  appVersion: string;
  /** Demo packs stay out unless asked for. */
  withDemo?: boolean;
  /** Share of the work done, 0–1: each photo and log is read twice, once to be checked and once to be written. */
  onProgress?(doneFrac: number): void;
  signal?: AbortSignal;
  /** For tests. */
  maxPartBytes?: number;
}

export interface SavedPart {
  fileName: string;
  blob: Blob;
  part: number;
  parts: number;
  packIds: string[];
  /** Hashes to hand to `store.noteBackup` once the file has been handed over. */
  hashes: string[];
  /** What could not go in, e.g. a photo whose bytes are not on this phone. */
  leftOut: LeftOut[];
}

/**
 * Writes the packs as zip parts that each stand alone, one after the other. Nothing comes of no packs.
 *
 * Throws  the signal's reason when cancelled; whatever reading the database throws; an Error if a pack is erased meanwhile.
 */
export async function* saveBundle(options: SaveBundle): AsyncGenerator<SavedPart, void, undefined> {
  const { store, signal, onProgress } = options;
  const packIds = await wantedPacks(options);
  let stepCount = 0;
  for (const packId of packIds) stepCount += 2 * groupCountOf(packId, await store.entriesOf(packId));
  let stepsDone = 0;
  const step = () => {
    signal?.throwIfAborted();
    stepsDone += 1;
    onProgress?.(Math.min(stepsDone / Math.max(stepCount, 1), 1));
  };

  const packs: GatheredPack[] = [];
  for (const packId of packIds) {
    signal?.throwIfAborted();
    const pack = await gatherPack(store, packId, step);
    if (pack !== null) packs.push(pack);
  }
  const parts = planParts(packs, options.maxPartBytes ?? MAX_PART_BYTES);
  const newest = packs.map(({ newestAt }) => newestAt).sort().at(-1); // biome-ignore format: one line
  if (newest === undefined) return;
  const bundle = { bundleId: randomId(), newest, parts: parts.length, appVersion: options.appVersion };
  for (const [i, part] of parts.entries()) {
    yield { ...(await writePart(part, { ...bundle, part: i + 1 }, step)), part: i + 1, parts: parts.length };
  }
  onProgress?.(1);
}

async function wantedPacks({ store, packIds, withDemo = false }: SaveBundle): Promise<string[]> {
  const cards = (await store.cards()).filter(({ demo }) => withDemo || !demo);
  const present = cards.map(({ packId }) => packId);
  return packIds === 'all' ? present : present.filter((packId) => packIds.includes(packId));
}

type BundleFacts = Pick<Manifest, 'bundleId' | 'newest' | 'parts' | 'part' | 'appVersion'>;

async function writePart(planned: PlannedPart, facts: BundleFacts, step: () => void) {
  const files = [...planned.files.values()];
  const manifest: Manifest = {
    format: BUNDLE_FORMAT,
    schemaVersion: SCHEMA_VERSION,
    ...facts,
    packIds: planned.packIds,
    files: files.map(({ path, byteCount, sha256, type }) => ({ path, byteCount, sha256, type })),
  };
  const zip = zipWriter(stampMs(facts.newest));
  zip.add(MANIFEST_PATH, new TextEncoder().encode(JSON.stringify(manifest)), 'deflated');
  for (const file of files) {
    const bytes = await file.read();
    if (bytes.byteLength !== file.byteCount) throw new Error(`saveBundle: ${file.path} went away while saving`);
    zip.add(file.path, bytes, file.type === 'application/json' ? 'deflated' : 'stored');
    if (file.path.startsWith('photos/') || file.path.startsWith('logs/')) step();
  }
  return {
    fileName: fileNameOf(facts),
    blob: zip.finish(),
    packIds: planned.packIds,
    hashes: files.flatMap(({ path }) => hashIn(path)),
    leftOut: planned.leftOut,
  };
}

function hashIn(path: string): string[] {
  const place = readPath(path);
  return place?.kind === 'bytes' ? [place.sha256] : [];
}

/** Day of the newest entry (UTC), six digits that the parts of one bundle share, and which part it is. */
function fileNameOf({ newest, bundleId, part, parts }: BundleFacts): string {
  const day = new Date(stampMs(newest)).toISOString().slice(0, 10);
  const which = parts === 1 ? '' : `-part-${part}-of-${parts}`;
  return `underlid-${day}-${bundleId.slice(0, 6)}${which}.zip`;
}
