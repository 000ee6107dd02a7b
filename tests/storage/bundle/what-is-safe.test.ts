import { promisifyRequest } from 'idb-keyval';
import { expect, it } from 'vitest';
import { restoreBundle } from '../../../src/storage/bundle/restore-bundle.ts';
import { sha256Of } from '../../../src/storage/bundle/sha256-of.ts';
import type { Store } from '../../../src/storage/store.ts';
import { PACK, photoValue } from '../../record/made-entries.ts';
import { answer, change, newPhone, type Phone, storeOn, written } from '../open-test-store.ts';
import { benchOfPacks, cardFrom, jpegBytes, leftOutOf, partsOf, read } from './bench-of-packs.ts';

/** A pack with one photo whose bytes are damaged, its thumbnail being whole. */
async function withDamagedPhoto(): Promise<{ store: Store; photoId: string }> {
  const store = await storeOn(newPhone());
  const photoId = await sha256Of(jpegBytes(3000, 1));
  const type = 'image/jpeg';
  const puts = [{ subject: 'photo', part: photoId, v: { ...photoValue(), made: null } }];
  await written(
    store,
    change(puts, {
      photos: [
        { sha256: photoId, shelf: 'photos', content: { type, bytes: jpegBytes(2900, 2) } },
        { sha256: photoId, shelf: 'thumbs', content: { type, bytes: jpegBytes(200, 3, { widthPx: 320, heightPx: 240 }) } },
      ],
    }),
  ); // biome-ignore format: one line a photo
  return { store, photoId };
}

it('counts a photo that could not go in as in no backup, though its thumbnail went: 1', async () => {
  const { store, photoId } = await withDamagedPhoto();
  const [part] = await partsOf(store);
  expect(part?.files.map(({ path }) => path)).toContain(`thumbs/${photoId}.jpg`);
  expect(await leftOutOf(store)).toEqual([{ what: `photos/${photoId}.jpg`, reason: 'damaged' }]);
  await store.noteBackup(part?.hashes ?? [], { fileName: 'part.zip', packCount: 1 });
  expect(await store.photosInNoBackup()).toBe(1);
});

it('counts it so too on a phone that restored the thumbnail alone, and names the photo as missing', async () => {
  const { store, photoId } = await withDamagedPhoto();
  const result = await read((await partsOf(store))[0]);
  if (!result.ok) throw new Error(result.detail);
  const other = await storeOn(newPhone());
  const report = await restoreBundle(other, result.bundle, { bringBackDeleted: false, cardOf: cardFrom });
  expect(report.packs[0]?.missingPhotos).toEqual([photoId]);
  expect(await other.photosInNoBackup()).toBe(1);
});

it('leaves a checklist out, and says so, that would have the whole bundle refused', async () => {
  const store = await benchOfPacks();
  const text = '{"id":"own","version":"1.0.0","title":"b\u202eackwards"}';
  const sha256 = await sha256Of(new TextEncoder().encode(text));
  const puts = [{ subject: 'pack', part: 'checklist', v: { id: 'own', version: '1.0.0', sha256 } }];
  await written(store, change(puts, { definition: { sha256, text } }));
  expect(await leftOutOf(store)).toEqual([{ what: `definitions/${sha256}.json`, reason: 'damaged' }]);
  expect(await read((await partsOf(store))[0])).toMatchObject({ ok: true });
});

it('restores what a phone wrote whose clock stood in 2106', async () => {
  const phone = newPhone();
  phone.clock.nowMs = Date.UTC(2106, 1, 7, 6, 28, 16);
  const store = await storeOn(phone);
  const entries = await written(store, change([answer('cell-vents', 'weak'), answer('bus-bars', 'sound')]));
  const result = await read((await partsOf(store))[0]);
  expect(result.ok && result.bundle.packs[0]?.entries).toEqual(await store.entriesOf(PACK));
  expect(entries[0] && entries[1] && entries[0].at < entries[1].at).toBe(true);
});

it('names what is wrong with a pack of which nothing can go in', async () => {
  const phone = newPhone();
  const store = await storeOn(phone);
  await written(store, change([answer('cell-vents', 'weak')]));
  await spoil(phone);
  expect(await partsOf(store)).toEqual([]);
  expect(await leftOutOf(store)).toEqual([{ what: `${PACK}/answer/cell-vents`, reason: 'badEntry' }]);
});

/** The one entry of the phone gets a grade that there is not. */
async function spoil({ indexedDB }: Phone): Promise<void> {
  const db = await promisifyRequest(indexedDB.open('underlid'));
  const entries = db.transaction('entries', 'readwrite').objectStore('entries');
  const [entry] = await promisifyRequest<{ key: string[]; v: object }[]>(entries.getAll());
  if (entry === undefined) throw new Error('there is no entry');
  await promisifyRequest(entries.put({ ...entry, v: { ...entry.v, grade: 'splendid' } }, entry.key));
  db.close();
}
