import { foldRecord } from '../../record/fold-record.ts';
import { keyText } from '../../record/merge-entries.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import { webAnnotationOf } from '../../record/web-annotation.ts';
import { checkEntry } from '../../schema/check-entry.ts';
import type { Entry } from '../../schema/entry.ts';
import type { Shelf, Store } from '../store.ts';
import { maxBytesOf } from './bundle-limits.ts';
import { annotationsPath, type BundlePath, bytesPath, definitionPath, entriesPath } from './bundle-paths.ts';
import { checkFile, type FrameSize } from './check-file.ts';
import { RefusedBundle } from './refused-bundle.ts';
import { deletedSinceSealed, type RecordBytes } from './sealed-bytes.ts';
import { sha256Of } from './sha256-of.ts';

/** Something that could not go into the bundle, so that it is said and not found out at restore. */
export interface LeftOut {
  what: string;
  reason: 'badEntry' | 'missing' | 'damaged';
}

/** One file of a part, known well enough to be planned and listed. */
export interface PlannedFile {
  path: string;
  byteCount: number;
  sha256: string;
  type: string;
  /** Reads its bytes; those of photos, logs and voice notes are not held between planning and writing. */
  read(): Promise<Uint8Array<ArrayBuffer>>;
}

/** What one pack brings: files every part of it repeats, and groups of bytes that must lie together. */
export interface GatheredPack {
  packId: string;
  newestAt: string;
  core: PlannedFile[];
  groups: PlannedFile[][];
}

interface Gathering {
  /** Takes what cannot go in, also of a pack of which nothing can. */
  leftOut: LeftOut[];
  /** Called once for each photo, log, sealed sheet and voice note looked at. */
  onGroup(): void;
}

/** Null for a pack without a single sound entry. */
export async function gatherPack(
  store: Store,
  packId: string,
  { leftOut, onGroup }: Gathering,
): Promise<GatheredPack | null> {
  const entries = (await store.entriesOf(packId)).filter((entry) => {
    const { ok } = checkEntry(entry);
    if (!ok) leftOut.push({ what: keyText(entry.key), reason: 'badEntry' });
    return ok;
  });
  const record = foldRecord(packId, entries);
  if (record.newestAt === null) return null;
  const core = [
    await jsonFile(entriesPath(packId), entries),
    await jsonFile(annotationsPath(packId), annotationsOf(record)),
  ];
  // The one it was carried over from as well: its score stands beside.
  for (const sha256 of new Set([record.checklist?.sha256, record.carriedFrom?.sha256])) {
    const definition = await definitionFile(store, sha256, leftOut);
    if (definition !== null) core.push(definition);
  }
  const groups: PlannedFile[][] = [];
  const deleted = await deletedSinceSealed(store, record);
  for (const wanted of [...bytesOf(record), ...bytesOf({ ...deleted, closings: [] })]) {
    const files = await Promise.all(wanted.map((one) => bytesFile(store, one, leftOut)));
    groups.push(files.filter((file) => file !== null));
    onGroup();
  }
  return { packId, newestAt: record.newestAt, core, groups };
}

/** How many photos, logs, sealed sheets and voice notes a pack's entries hold: what `gatherPack` will look at, but for those deleted since a closing. */
export function groupCountOf(packId: string, entries: readonly Entry[]): number {
  return bytesOf(foldRecord(packId, entries)).length;
}

interface Shelved {
  shelf: Shelf;
  sha256: string;
  /** Of a photo, as its entry gives it. */
  size?: FrameSize;
}

/** The bytes a record needs, those that belong together in one group: a photo's, a log's, a sealed sheet's, a voice note's. */
function bytesOf({ photos, tests, closings, voices }: RecordBytes & Pick<PackRecord, 'closings'>): Shelved[][] {
  return [
    ...photos.map(({ id, keptOriginal, widthPx, heightPx }): Shelved[] => [
      { shelf: 'photos', sha256: id, size: { widthPx, heightPx } },
      { shelf: 'thumbs', sha256: id },
      ...(keptOriginal === undefined ? [] : [{ shelf: 'originals' as const, sha256: keptOriginal }]),
    ]),
    ...tests.logs.map(({ id }): Shelved[] => [{ shelf: 'logs', sha256: id }]),
    ...closings.map(({ sha256 }): Shelved[] => [{ shelf: 'sealed', sha256 }]),
    ...voices.map(({ id }): Shelved[] => [{ shelf: 'voices', sha256: id }]),
  ];
}

async function jsonFile(path: string, value: unknown): Promise<PlannedFile> {
  return textFile(path, JSON.stringify(value));
}

async function textFile(path: string, text: string): Promise<PlannedFile> {
  const bytes = new TextEncoder().encode(text);
  const type = 'application/json';
  return { path, byteCount: bytes.byteLength, sha256: await sha256Of(bytes), type, read: async () => bytes };
}

async function definitionFile(
  store: Store,
  sha256: string | undefined,
  leftOut: LeftOut[],
): Promise<PlannedFile | null> {
  if (sha256 === undefined) return null;
  const path = definitionPath(sha256);
  const text = await store.definitionText(sha256);
  const file = text === null ? null : await textFile(path, text);
  if (file !== null && willComeBack({ place: { kind: 'definitions', sha256 }, path }, await contentOf(file)))
    return file;
  leftOut.push({ what: path, reason: file === null ? 'missing' : 'damaged' });
  return null;
}

async function bytesFile(store: Store, shelved: Shelved, leftOut: LeftOut[]): Promise<PlannedFile | null> {
  const { shelf, sha256 } = shelved;
  const path = bytesPath(shelf, sha256);
  const contentNow = () => {
    if (shelf === 'logs') return store.log(sha256);
    if (shelf === 'voices') return store.voice(sha256);
    return shelf === 'sealed' ? store.sealed(sha256) : store.photo(sha256, shelf);
  };
  const content = await contentNow();
  const bytes = content === null ? null : new Uint8Array(content.bytes);
  const hash = bytes === null ? null : await sha256Of(bytes);
  if (content === null || bytes === null || hash === null) {
    leftOut.push({ what: path, reason: 'missing' });
    return null;
  }
  const { size } = shelved;
  if (
    !willComeBack({ place: { kind: 'bytes', shelf, sha256 }, path, ...(size && { size }) }, { sha256: hash, bytes })
  ) {
    leftOut.push({ what: path, reason: 'damaged' });
    return null;
  }
  const read = async () => new Uint8Array((await contentNow())?.bytes ?? new ArrayBuffer(0));
  return { path, byteCount: bytes.byteLength, sha256: hash, type: content.type, read };
}

interface Found {
  sha256: string;
  bytes: Uint8Array<ArrayBuffer>;
}

async function contentOf({ sha256, read }: PlannedFile): Promise<Found> {
  return { sha256, bytes: await read() };
}

/** The reader's own check, so that one damaged photo or checklist cannot cost a whole bundle when it is needed. */
function willComeBack({ place, path, size }: { place: BundlePath; path: string; size?: FrameSize }, found: Found) {
  if (found.bytes.byteLength > maxBytesOf(place)) return false;
  try {
    const checked = checkFile({ path, place, ...found });
    const frame = checked.kind === 'bytes' ? checked.frame : null;
    return size === undefined || (frame?.widthPx === size.widthPx && frame.heightPx === size.heightPx);
  } catch (error) {
    if (error instanceof RefusedBundle) return false;
    throw error;
  }
}

/** W3C Web Annotation Data Model, section 5.2: a page that holds its annotations whole. */
function annotationsOf(record: PackRecord) {
  return {
    '@context': 'http://www.w3.org/ns/anno.jsonld',
    id: `urn:underlid:annotations:${record.packId}`,
    type: 'AnnotationPage',
    items: record.photos.flatMap((photo) => {
      const picture = {
        source: `../${bytesPath('photos', photo.id)}`,
        widthPx: photo.widthPx,
        heightPx: photo.heightPx,
      };
      return photo.callouts.map((callout) => webAnnotationOf(callout, picture));
    }),
  };
}
