import zlib from 'node:zlib';
import { unzipSync } from 'fflate';
import { expect, it } from 'vitest';
import { foldRecord } from '../../../src/record/fold-record.ts';
import { calloutOfWebAnnotation } from '../../../src/record/web-annotation.ts';
import { readMember } from '../../../src/storage/bundle/read-member.ts';
import { restoreBundle } from '../../../src/storage/bundle/restore-bundle.ts';
import { sha256Of } from '../../../src/storage/bundle/sha256-of.ts';
import { readZipDirectory } from '../../../src/storage/bundle/zip-directory.ts';
import type { Store } from '../../../src/storage/store.ts';
import { OTHER_PACK, PACK } from '../../record/made-entries.ts';
import { cardOf, newPhone, storeOn } from '../open-test-store.ts';
import {
  benchOfPacks,
  blobOf,
  bytesOf,
  cardFrom,
  DEFINITION,
  DEMO_PACK,
  leftOutOf,
  partsOf,
  read,
  readZip,
  writePhoto,
} from './bench-of-packs.ts';

const asBefore = { bringBackDeleted: false, cardOf: cardFrom };

async function restoreAll(store: Store, parts: Awaited<ReturnType<typeof partsOf>>) {
  const reports = [];
  for (const part of parts) {
    const result = await read(part);
    if (!result.ok) throw new Error(`${result.refusal}: ${result.detail}`);
    reports.push(await restoreBundle(store, result.bundle, asBefore));
  }
  return reports;
}

/** Everything of a pack that a person could miss: entries, card, and every byte of every picture. */
async function everythingOf(store: Store, packId: string) {
  const entries = await store.entriesOf(packId);
  const { photos, checklist } = foldRecord(packId, entries);
  const pictures = await Promise.all(
    photos.flatMap(({ id, keptOriginal }) => [store.photo(id), store.photo(id, 'thumbs'), store.photo(keptOriginal ?? '', 'originals')]),
  ); // biome-ignore format: compact
  const card = (await store.cards()).find((one) => one.packId === packId);
  return { entries, card, definition: await store.definitionText(checklist?.sha256 ?? ''), pictures };
}

it('restores 2 packs on an empty phone as they were: entries, stamps, cards, definition and 9 pictures byte for byte', async () => {
  const store = await benchOfPacks();
  const fresh = await storeOn(newPhone());
  const parts = await partsOf(store);
  expect(parts).toHaveLength(1);
  const [report] = await restoreAll(fresh, parts);
  for (const [packId, pictureCount] of [[PACK, 6], [OTHER_PACK, 3]] as const) {
    const before = await everythingOf(store, packId);
    expect(before.definition).toBe(DEFINITION);
    expect(before.pictures.filter((picture) => picture !== null)).toHaveLength(pictureCount);
    expect(await everythingOf(fresh, packId)).toEqual(before);
  } // biome-ignore format: compact
  expect((await fresh.cards()).map(({ packId }) => packId)).toEqual([PACK, OTHER_PACK]);
  expect(report?.packs.map(({ packId, added, written }) => [packId, added, written.length])).toEqual([
    [PACK, true, 11],
    [OTHER_PACK, true, 8],
  ]);
});

it('carries along the definition a record was carried over from, so that its other score stays', async () => {
  const store = await benchOfPacks();
  const earlier = '{"made":"earlier"}';
  const sha256 = await sha256Of(new TextEncoder().encode(earlier));
  await store.keepDefinition(sha256, earlier);
  const card = (await store.cards()).find(({ packId }) => packId === PACK);
  const puts = [{ subject: 'pack', part: 'carriedFrom', v: { id: 'lfp-drop-in', version: '0.9.0', sha256 } }];
  if (card === undefined) throw new Error('the pack has a card');
  expect(await store.write({ packId: PACK, puts, card })).toMatchObject({ ok: true });
  const bundle = await read((await partsOf(store, { packIds: [PACK] }))[0]);
  expect(bundle.ok && bundle.bundle.definitions.map(({ text }) => text)).toEqual([DEFINITION, earlier]);
});

it('changes nothing when the same bundle is restored again, here and there', async () => {
  const store = await benchOfPacks();
  const parts = await partsOf(store);
  const before = await everythingOf(store, PACK);
  const [report] = await restoreAll(store, parts);
  expect(await everythingOf(store, PACK)).toEqual(before);
  expect(report?.packs).toMatchObject(Array(2).fill({ added: false, written: [], newerHere: [], deletedHere: [] }));
});

it('leaves the demo pack out, and takes it when asked or when one pack is named', async () => {
  const store = await benchOfPacks();
  const packsIn = async (more: object) => (await partsOf(store, more)).flatMap(({ packIds }) => packIds);
  expect(await packsIn({})).toEqual([PACK, OTHER_PACK]);
  expect(await packsIn({ withDemo: true })).toEqual([PACK, OTHER_PACK, DEMO_PACK]);
  expect(await packsIn({ packIds: [OTHER_PACK] })).toEqual([OTHER_PACK]);
  expect(await packsIn({ packIds: [] })).toEqual([]);
});

it('stores 9 JPEGs as they are and deflates 6 texts, each with the CRC-32 and bytes that zlib finds', async () => {
  const [part] = await partsOf(await benchOfPacks());
  const file = part?.blob ?? new Blob();
  const zip = await bytesOf(part);
  const members = await readZipDirectory(file);
  expect(members.filter(({ deflated }) => !deflated).map(({ path }) => path.slice(-3))).toEqual(Array(9).fill('jpg'));
  expect(members.filter(({ deflated }) => deflated)).toHaveLength(6);
  for (const member of members) {
    const { path, packedBytes, deflated, byteCount, crc32, from } = member;
    const packed = zip.subarray(from + 30 + path.length, from + 30 + path.length + packedBytes);
    // Node's zlib, an implementation apart from the one that wrote the zip.
    const bytes = deflated ? zlib.inflateRawSync(packed) : packed;
    expect([bytes.byteLength, zlib.crc32(bytes)]).toEqual([byteCount, crc32]);
    expect(Buffer.compare(await readMember(file, member), bytes)).toBe(0);
  }
});

it('splits 12 photos over parts of at most 20 kB, each of which restores alone on a phone of its own', async () => {
  const store = await benchOfPacks();
  for (let seed = 10; seed < 19; seed += 1) await writePhoto(store, PACK, { length: 2000, seed });
  const parts = await partsOf(store, { maxPartBytes: 20_000 });
  expect(parts.length).toBeGreaterThan(3);
  const all = new Set<string>();
  for (const part of parts) {
    expect(part.blob.size).toBeLessThanOrEqual(20_000);
    expect(part.fileName).toMatch(
      new RegExp(`^underlid-2025-11-24-[0-9a-f]{6}-part-${part.part}-of-${parts.length}\\.zip$`),
    );
    const alone = await storeOn(newPhone());
    const [report] = await restoreAll(alone, [part]);
    for (const packId of part.packIds) expect(await alone.entriesOf(packId)).toEqual(await store.entriesOf(packId));
    for (const { packId, missingPhotos } of report?.packs ?? []) {
      const photoIds = foldRecord(packId, await store.entriesOf(packId)).photos.map(({ id }) => id);
      expect(missingPhotos).toEqual(photoIds.filter((id) => !part.hashes.includes(id)).sort());
    }
    for (const hash of part.hashes) all.add(hash);
  }
  const together = await storeOn(newPhone());
  const reports = await restoreAll(together, parts.toReversed());
  expect(reports.at(-1)?.packs.find(({ packId }) => packId === PACK)?.missingPhotos).toEqual([]);
  for (const packId of [PACK, OTHER_PACK]) {
    expect(await everythingOf(together, packId)).toEqual(await everythingOf(store, packId));
  }
  expect(all.size).toBe(24);
});

it('keeps a photo that two packs share once in a part', async () => {
  const store = await benchOfPacks();
  await writePhoto(store, OTHER_PACK, { seed: 1 });
  const parts = await partsOf(store);
  const fresh = await storeOn(newPhone());
  await restoreAll(fresh, parts);
  await fresh.erase(PACK);
  expect(await everythingOf(fresh, OTHER_PACK)).toEqual(await everythingOf(store, OTHER_PACK));
});

it('writes one annotation per callout that reads back as the callout', async () => {
  const store = await benchOfPacks();
  const files = unzipSync(await bytesOf((await partsOf(store))[0]));
  const page = JSON.parse(new TextDecoder().decode(files[`annotations/${PACK}.json`]));
  const { photos } = foldRecord(PACK, await store.entriesOf(PACK));
  const back = photos.map(({ id, widthPx, heightPx }, i) =>
    calloutOfWebAnnotation(page.items[i], { source: `../photos/${id}.jpg`, widthPx, heightPx }),
  );
  expect(page).toMatchObject({ type: 'AnnotationPage' });
  expect(back).toEqual(photos.map(({ callouts }) => ({ ok: true, callout: callouts[0] })));
});

it('leaves out, and says so, a photo whose bytes are gone and one whose bytes are damaged', async () => {
  const store = await benchOfPacks();
  const [first, second] = foldRecord(PACK, await store.entriesOf(PACK)).photos.map(({ id }) => id);
  const photo = store.photo;
  store.photo = async (sha256, shelf) => {
    if (sha256 === first && shelf === 'photos') return null;
    const content = await photo(sha256, shelf);
    if (sha256 === second && shelf === 'photos' && content) new Uint8Array(content.bytes).fill(7, 100, 101);
    return content;
  };
  const parts = await partsOf(store);
  expect(await leftOutOf(store)).toEqual([
    { what: `photos/${first}.jpg`, reason: 'missing' },
    { what: `photos/${second}.jpg`, reason: 'damaged' },
  ]);
  expect(await read(parts[0])).toMatchObject({ ok: true });
});

it('tells how far it is, up to 1, and stops when cancelled: planning, writing, checking', async () => {
  const store = await benchOfPacks();
  const seen: number[] = [];
  const [part] = await partsOf(store, { onProgress: (doneFrac) => seen.push(doneFrac) });
  if (part === undefined) throw new Error('there is a part');
  expect(seen).toEqual([1 / 3, 2 / 3, 1]);
  const stop = new AbortController();
  const cancelled = partsOf(store, { signal: stop.signal, onProgress: () => stop.abort(new Error('stopped by hand')) });
  await expect(cancelled).rejects.toThrow('stopped by hand');
  const half = new AbortController();
  const onProgress = (doneFrac: number) => doneFrac > 0.5 && half.abort(new Error('stopped half way'));
  await expect(blobOf(part, { signal: half.signal, onProgress })).rejects.toThrow('stopped half way');
  const checking = new AbortController();
  const checked: number[] = [];
  const stopped = readZip(await bytesOf(part), {
    signal: checking.signal,
    onProgress: (doneFrac) => {
      checked.push(doneFrac);
      if (doneFrac > 0.5) checking.abort(new Error('stopped too'));
    },
  });
  await expect(stopped).rejects.toThrow('stopped too');
  expect(checked.at(-1)).toBeGreaterThan(0.5);
  expect(checked.at(-1)).toBeLessThan(1);
});

it('counts restored and saved photos as backed up', async () => {
  const store = await benchOfPacks();
  expect(await store.photosInNoBackup()).toBe(3);
  const parts = await partsOf(store);
  await store.noteBackup(parts.flatMap(({ hashes }) => hashes));
  expect(await store.photosInNoBackup()).toBe(0);
  const fresh = await storeOn(newPhone());
  await restoreAll(fresh, parts);
  expect(await fresh.photosInNoBackup()).toBe(0);
  expect((await fresh.cards()).map(({ photoCount }) => photoCount)).toEqual([2, 1]);
  expect(cardOf(PACK)([]).photoCount).toBe(0);
});
