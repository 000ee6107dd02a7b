import { type Unzipped, unzipSync, zipSync } from 'fflate';
import { foldRecord } from '../../../src/record/fold-record.ts';
import type { Entry } from '../../../src/schema/entry.ts';
import type { PackCard } from '../../../src/schema/pack-card.ts';
import type { LeftOut } from '../../../src/storage/bundle/gather-pack.ts';
import { type PartPlan, type PlanBundle, planBundle } from '../../../src/storage/bundle/plan-bundle.ts';
import { type ReadBundle, type ReadOptions, readBundle } from '../../../src/storage/bundle/read-bundle.ts';
import { sha256Of } from '../../../src/storage/bundle/sha256-of.ts';
import { type WriteOptions, writePart } from '../../../src/storage/bundle/write-part.ts';
import { blobSink } from '../../../src/storage/bundle/zip-writer.ts';
import type { NewPhotoBytes, Put, Store } from '../../../src/storage/store.ts';
import { OTHER_PACK, PACK, photoValue } from '../../record/made-entries.ts';
import { answer, change, cardOf as emptyCard, newPhone, storeOn, written } from '../open-test-store.ts';

export const DEMO_PACK = 'd'.repeat(32);
export const DEFINITION = '{"id":"lfp-drop-in","version":"1.0.0"}\n';

/** The size that `photoValue` gives a photo, and what a thumbnail of it has. */
export const PHOTO_SIZE = { widthPx: 2048, heightPx: 1536 };
const THUMB_SIZE = { widthPx: 320, heightPx: 240 };

/** A JPEG of so many bytes as its markers tell it (ITU-T T.81, B.2): frame, scan, nonsense that does not deflate, end. */
export function jpegBytes(length: number, seed: number, { widthPx, heightPx } = PHOTO_SIZE): ArrayBuffer {
  let state = seed;
  const bytes = Uint8Array.from({ length }, () => {
    // In whole numbers of 32 bits: as floating point it would soon repeat, and then deflate.
    state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fff_ffff;
    // No 0xff, which would be a marker.
    return (state >>> 16) % 255;
  });
  const frame = [0xff, 0xc0, 0, 11, 8, heightPx >> 8, heightPx & 255, widthPx >> 8, widthPx & 255, 1, 1, 0x11, 0];
  bytes.set([0xff, 0xd8, ...frame, 0xff, 0xda, 0, 8, 1, 1, 0, 0, 63, 0]);
  bytes.set([0xff, 0xd9], length - 2);
  return bytes.buffer;
}

/** A card computed from the entries, as the app would. */
export function cardFrom(entries: Entry[]): PackCard {
  const packId = entries[0]?.key[0] ?? '';
  const record = foldRecord(packId, entries);
  return { ...emptyCard(packId, record.demo)(entries), photoCount: record.photos.length };
}

/** A photo with thumbnail, original, link and callout, written as the app would. */
export async function writePhoto(store: Store, packId: string, { length = 3000, seed = 1 } = {}): Promise<string> {
  const bytes = jpegBytes(length, seed);
  const original = jpegBytes(length + 500, seed + 1000);
  const sha256 = await sha256Of(bytes);
  const keptOriginal = await sha256Of(original);
  const type = 'image/jpeg';
  const photos: NewPhotoBytes[] = [
    { sha256, shelf: 'photos', content: { type, bytes } },
    { sha256, shelf: 'thumbs', content: { type, bytes: jpegBytes(200, seed + 2000, THUMB_SIZE) } },
    { sha256: keptOriginal, shelf: 'originals', content: { type, bytes: original } },
  ];
  const puts: Put[] = [
    { subject: 'photo', part: sha256, v: { ...photoValue(), originalSha256: keptOriginal, keptOriginal, made: null } },
    { subject: 'photoItem', part: `${sha256}/cell-vents`, v: true },
    {
      subject: 'callout',
      part: sha256.slice(0, 32),
      v: { photoId: sha256, kind: 'leader', points: [[0.1, 0.2], [0.5, 0.25]], text: 'Tape über dem Ventil', made: null },
    },
  ]; // biome-ignore format: compact
  await written(store, change(puts, { packId, photos, card: await cardAfter(store, packId, puts) }));
  return sha256;
}

/** A log as a bench would write it, one row a second, different for each seed. */
export function logBytes(rowCount: number, seed: number): ArrayBuffer {
  const rows = Array.from({ length: rowCount }, (_, i) => `${i};${(26 - i / 1000).toFixed(3)};${20 + seed}`);
  return new TextEncoder().encode(`Zeit;Spannung V;Strom A ±\n${rows.join('\n')}\n`).buffer;
}

/** A log kept with a pack, written as the app would. */
export async function writeLog(store: Store, packId: string, { rowCount = 100, seed = 1 } = {}): Promise<string> {
  const bytes = logBytes(rowCount, seed);
  const sha256 = await sha256Of(bytes);
  const v = { name: `run ${seed}.csv`, byteCount: bytes.byteLength, rowCount, made: null };
  const puts: Put[] = [{ subject: 'log', part: sha256, v }];
  const photos: NewPhotoBytes[] = [{ sha256, shelf: 'logs', content: { type: 'text/plain', bytes } }];
  await written(store, change(puts, { packId, photos, card: await cardAfter(store, packId, puts) }));
  return sha256;
}

/** A phone with two packs (2 photos and 1 photo), one deleted answer, and a demo pack. */
export async function benchOfPacks(): Promise<Store> {
  const store = await storeOn(newPhone());
  const definitionHash = await sha256Of(new TextEncoder().encode(DEFINITION));
  for (const packId of [PACK, OTHER_PACK, DEMO_PACK]) {
    const puts: Put[] = [
      { subject: 'pack', part: 'made', v: packId === DEMO_PACK ? { demo: true } : {} },
      { subject: 'pack', part: 'checklist', v: { id: 'lfp-drop-in', version: '1.0.0', sha256: definitionHash } },
      { subject: 'nameplate', part: 'name', v: packId === PACK ? 'Wren 24' : 'Dipper 24' },
      answer('cell-vents', 'weak'),
      answer('bus-bars', 'sound'),
    ];
    const card = await cardAfter(store, packId, puts);
    await written(store, change(puts, { packId, card, definition: { sha256: definitionHash, text: DEFINITION } }));
  }
  const gone: Put[] = [{ subject: 'answer', part: 'bus-bars', gone: true }];
  await written(store, change(gone, { card: await cardAfter(store, PACK, gone) }));
  await writePhoto(store, PACK, { seed: 1 });
  await writePhoto(store, PACK, { seed: 2 });
  await writePhoto(store, OTHER_PACK, { seed: 3 });
  return store;
}

async function cardAfter(store: Store, packId: string, puts: Put[]): Promise<PackCard> {
  const stamp = (i: number) => `9${String(i).padStart(14, '0')}.000000.${'0'.repeat(32)}`;
  const coming = puts.map((put, i): Entry => {
    const key: Entry['key'] = [packId, put.subject, put.part];
    const at = stamp(i);
    if ('gone' in put) return { key, v: null, at, by: '0'.repeat(32), gone: true };
    const v = typeof put.v === 'object' && put.v !== null && 'made' in put.v ? { ...put.v, made: at } : put.v;
    return { key, v, at, by: '0'.repeat(32) };
  });
  const before = await store.entriesOf(packId);
  const replaced = new Set(coming.map(({ key }) => key.join('/')));
  return cardFrom([...before.filter(({ key }) => !replaced.has(key.join('/'))), ...coming]);
}

export interface SavedPart extends PartPlan {
  blob: Blob;
}

/** Plans a bundle of everything and writes each of its parts. */
export async function partsOf(store: Store, more: Partial<PlanBundle> = {}): Promise<SavedPart[]> {
  const { parts } = await planBundle({ store, packIds: 'all', appVersion: '0.1.0', ...more });
  const saved: SavedPart[] = [];
  for (const part of parts) saved.push({ ...part, blob: await blobOf(part) });
  return saved;
}

export async function blobOf(part: PartPlan, options: WriteOptions = {}): Promise<Blob> {
  const sink = blobSink();
  await writePart(part, sink, options);
  return sink.blob();
}

/** What cannot go into a bundle of everything. */
export async function leftOutOf(store: Store): Promise<LeftOut[]> {
  return (await planBundle({ store, packIds: 'all', appVersion: '0.1.0' })).leftOut;
}

export async function bytesOf(part: SavedPart | undefined): Promise<Uint8Array<ArrayBuffer>> {
  if (part === undefined) throw new Error('there is no such part');
  return new Uint8Array(await part.blob.arrayBuffer());
}

export async function read(part: SavedPart | undefined): Promise<ReadBundle> {
  return readZip(await bytesOf(part));
}

/** Reads a bundle as the app does from a chosen file. */
export function readZip(zip: Uint8Array, options: ReadOptions = {}): Promise<ReadBundle> {
  return readBundle(new Blob([zip as Uint8Array<ArrayBuffer>]), options);
}

export type Manifest = { files: { path: string; byteCount: number; sha256: string }[] } & Record<string, unknown>;

export interface Forgery {
  /** Changes files after unpacking. */
  files?(files: Unzipped): void;
  /** Changes the manifest after its sizes and checksums were made right again. */
  manifest?(manifest: Manifest): void;
  /** Leave sizes and checksums as they were. */
  stale?: boolean;
}

/** A part unpacked, changed, its manifest made right again, and packed: what a forger who knows the format would do. */
export async function forge(
  zip: Uint8Array,
  { files, manifest, stale = false }: Forgery,
): Promise<Uint8Array<ArrayBuffer>> {
  const all = unzipSync(zip);
  const listed = JSON.parse(new TextDecoder().decode(all['manifest.json'])) as Manifest;
  files?.(all);
  if (!stale) {
    const paths = Object.keys(all).filter((path) => path !== 'manifest.json');
    listed.files = await Promise.all(
      paths.map(async (path) => {
        const bytes = (all[path] ?? new Uint8Array()) as Uint8Array<ArrayBuffer>;
        return { path, byteCount: bytes.byteLength, sha256: await sha256Of(bytes) };
      }),
    );
  }
  manifest?.(listed);
  return zipSync({ ...all, 'manifest.json': json(listed) });
}

export function json(value: unknown): Uint8Array<ArrayBuffer> {
  return new TextEncoder().encode(JSON.stringify(value));
}
