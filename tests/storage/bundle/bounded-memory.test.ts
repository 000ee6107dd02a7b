import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, expect, it, vi } from 'vitest';
import { planBundle } from '../../../src/storage/bundle/plan-bundle.ts';
import { readBundle, type VerifiedPart } from '../../../src/storage/bundle/read-bundle.ts';
import { restoreBundle } from '../../../src/storage/bundle/restore-bundle.ts';
import { writePart } from '../../../src/storage/bundle/write-part.ts';
import type { ZipSink } from '../../../src/storage/bundle/zip-writer.ts';
import type { Store } from '../../../src/storage/store.ts';
import { OTHER_PACK, PACK } from '../../record/made-entries.ts';
import { newPhone, storeOn } from '../open-test-store.ts';
import { benchOfPacks, blobOf, cardFrom, partsOf, writePhoto } from './bench-of-packs.ts';

afterEach(() => vi.restoreAllMocks());

const asBefore = { bringBackDeleted: false, cardOf: cardFrom };

/** A file that notes every slice asked of it and may be exchanged for another. Nothing but slices can be read. */
function watchedFile(blob: Blob) {
  const slices: number[] = [];
  const watched = { content: blob, largest: () => Math.max(...slices), count: () => slices.length };
  const refuse = () => Promise.reject(new Error('the whole file was asked for'));
  const file = {
    size: blob.size,
    arrayBuffer: refuse,
    text: refuse,
    slice: (from: number, to: number) => {
      slices.push(to - from);
      return watched.content.slice(from, to);
    },
  };
  return { ...watched, file: file as unknown as Blob, watched };
}

async function verified(file: Blob): Promise<VerifiedPart> {
  const result = await readBundle(file);
  if (!result.ok) throw new Error(`${result.refusal}: ${result.detail}`);
  return result.bundle;
}

/** 30 more photos of 100 kB: with thumbnails and originals 6 MB. */
async function largeBench(): Promise<Store> {
  const store = await benchOfPacks();
  for (let seed = 10; seed < 40; seed += 1) await writePhoto(store, PACK, { length: 100_000, seed });
  return store;
}

it('reads 6 MB by slices of at most 102 kB, a photo with its header, while checking and while writing', async () => {
  const [part] = await partsOf(await largeBench());
  const { file, largest, count } = watchedFile(part?.blob ?? new Blob());
  expect(file.size).toBeGreaterThan(6e6);
  const bundle = await verified(file);
  const checkedCount = count();
  await restoreBundle(await storeOn(newPhone()), bundle, asBefore);
  expect(count()).toBe(checkedCount + 99);
  // The tail that may hold the end record takes 64 kB.
  expect(largest()).toBeGreaterThan(100_000);
  expect(largest()).toBeLessThan(102_000);
});

it('streams the very bytes that the Blob has, waits for each piece, and holds 8 MB and one photo at most', async () => {
  const store = await benchOfPacks();
  for (let seed = 50; seed < 55; seed += 1) await writePhoto(store, PACK, { length: 3_000_000, seed });
  const { parts } = await planBundle({ store, packIds: 'all', appVersion: '0.1.0' });
  const [part] = parts;
  if (part === undefined) throw new Error('there is a part');
  const pieces: Blob[] = [];
  let waiting = 0;
  const sink: ZipSink = {
    write: async (piece) => {
      waiting += 1;
      expect(waiting).toBe(1);
      await new Promise((resolve) => setTimeout(resolve, 5));
      pieces.push(piece);
      waiting -= 1;
    },
  };
  await writePart(part, sink);
  const whole = await blobOf(part);
  expect(Buffer.compare(await bytes(new Blob(pieces)), await bytes(whole))).toBe(0);
  expect(pieces.length).toBeGreaterThan(2);
  for (const { size } of pieces) expect(size).toBeLessThan(8 * 1024 * 1024 + 3_001_000);
  expect(whole.size).toBeLessThanOrEqual(part.boundBytes);
  expect(part.boundBytes).toBeLessThan(whole.size * 1.01);
});

it('stops writing at the first piece that the sink refuses', async () => {
  const { parts } = await planBundle({ store: await benchOfPacks(), packIds: 'all', appVersion: '0.1.0' });
  const sink: ZipSink = { write: () => Promise.reject(new DOMException('no room', 'QuotaExceededError')) };
  await expect(parts[0] && writePart(parts[0], sink)).rejects.toThrow('no room');
});

it('takes in nothing of a file that is another by the time it is written, and says so', async () => {
  const [part] = await partsOf(await benchOfPacks());
  const zip = await bytes(part?.blob ?? new Blob());
  const { file, watched } = watchedFile(new Blob([zip]));
  const bundle = await verified(file);
  const changed = zip.slice();
  const at = Buffer.from(zip).indexOf('photos/') + 200;
  changed[at] = (changed[at] ?? 0) ^ 1;
  watched.content = new Blob([changed]);
  const fresh = await storeOn(newPhone());
  const before = await dumpOf(fresh);
  const report = await restoreBundle(fresh, bundle, asBefore);
  expect(report).toMatchObject({ packs: [], stopped: { packId: PACK, problem: 'fileChanged' } });
  expect(await dumpOf(fresh)).toEqual(before);
  watched.content = new Blob([zip.subarray(0, 500)]);
  expect((await restoreBundle(fresh, bundle, asBefore)).stopped).toMatchObject({ problem: 'fileChanged' });
  watched.content = new Blob([zip]);
  expect((await restoreBundle(fresh, bundle, asBefore)).stopped).toBeNull();
});

it('leaves a phone with a later state of the same pack as it was when the disk is full at the 5th photo', async () => {
  const [part] = await partsOf(await largeBench());
  const bundle = await verified(part?.blob ?? new Blob());
  const other = await benchOfPacks();
  const before = await dumpOf(other);
  const put = IDBObjectStore.prototype.put;
  let count = 0;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value, key) {
    if (this.name === 'photos' && ++count === 5) throw new DOMException('no room', 'QuotaExceededError');
    return put.call(this, value, key);
  });
  const report = await restoreBundle(other, bundle, asBefore);
  vi.restoreAllMocks();
  expect(report).toMatchObject({ packs: [], stopped: { packId: PACK, problem: 'quotaFull' } });
  expect(await dumpOf(other)).toEqual(before);
});

it('stopped by hand between packs and within one: whole packs stay, the pack in hand is as it was', async () => {
  const [part] = await partsOf(await benchOfPacks());
  const bundle = await verified(part?.blob ?? new Blob());
  const within = await storeOn(newPhone());
  const before = await dumpOf(within);
  const stop = new AbortController();
  const first = await restoreBundle(within, bundle, {
    ...asBefore,
    signal: stop.signal,
    onProgress: () => stop.abort(),
  });
  expect(first).toMatchObject({ packs: [], stopped: { packId: PACK, problem: 'byHand' } });
  expect(await dumpOf(within)).toEqual(before);

  const between = new AbortController();
  const cardOf: typeof cardFrom = (entries) => {
    between.abort();
    return cardFrom(entries);
  };
  const store = await storeOn(newPhone());
  const second = await restoreBundle(store, bundle, { bringBackDeleted: false, cardOf, signal: between.signal });
  expect(second.packs.map(({ packId }) => packId)).toEqual([PACK]);
  expect(second.stopped).toMatchObject({ packId: OTHER_PACK, problem: 'byHand' });
  expect(second.packs[0]?.missingPhotos).toEqual([]);
});

it('stops between packs also where no photo is left to be read', async () => {
  const store = await benchOfPacks();
  const [part] = await partsOf(store);
  const bundle = await verified(part?.blob ?? new Blob());
  const stop = new AbortController();
  const cardOf: typeof cardFrom = (entries) => {
    stop.abort();
    return cardFrom(entries);
  };
  const report = await restoreBundle(store, bundle, { bringBackDeleted: false, cardOf, signal: stop.signal });
  expect(report.packs.map(({ packId }) => packId)).toEqual([PACK]);
  expect(report.stopped).toMatchObject({ packId: OTHER_PACK, problem: 'byHand' });
});

async function bytes(blob: Blob): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(await blob.arrayBuffer());
}

/** All that a store hands out of its packs, photos and notes of backups. */
async function dumpOf(store: Store) {
  const cards = await store.cards();
  const packs = await Promise.all(
    [PACK, OTHER_PACK].map(async (packId) => {
      const entries = await store.entriesOf(packId);
      const ids = entries.filter(({ key }) => key[1] === 'photo').map(({ key }) => key[2]);
      return { entries, photos: await Promise.all(ids.flatMap((id) => [store.photo(id), store.photo(id, 'thumbs')])) };
    }),
  );
  const counts = [await store.photosInNoBackup(), await store.logsInNoBackup()];
  return { cards, packs, counts, definitions: await store.definitions() };
}
