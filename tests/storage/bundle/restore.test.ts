import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, expect, it, vi } from 'vitest';
import { restoreBundle } from '../../../src/storage/bundle/restore-bundle.ts';
import type { Store } from '../../../src/storage/store.ts';
import { OTHER_PACK, PACK } from '../../record/made-entries.ts';
import { answer, change, newPhone, storeOn, written } from '../open-test-store.ts';
import { benchOfPacks, cardFrom, partsOf, read } from './bench-of-packs.ts';

afterEach(() => vi.restoreAllMocks());

async function verifiedBackup(store: Store) {
  const result = await read((await partsOf(store))[0]);
  if (!result.ok) throw new Error(result.detail);
  return result.bundle;
}

const asking = { bringBackDeleted: false, cardOf: cardFrom };
const bringing = { bringBackDeleted: true, cardOf: cardFrom };

it('keeps an entry that is newer here and lists it', async () => {
  const store = await benchOfPacks();
  const backup = await verifiedBackup(store);
  const [newer] = await written(store, change([answer('cell-vents', 'failed')]));
  const { packs } = await restoreBundle(store, backup, asking);
  expect(packs[0]).toMatchObject({ packId: PACK, written: [], newerHere: [[PACK, 'answer', 'cell-vents']] });
  expect(await store.entriesOf(PACK)).toContainEqual(newer);
});

it('lists what was deleted here after the backup, and brings it back only when asked, under a new stamp', async () => {
  const store = await benchOfPacks();
  const backup = await verifiedBackup(store);
  const before = (await store.entriesOf(PACK)).find(({ key }) => key[2] === 'cell-vents');
  const [tombstone] = await written(store, change([{ subject: 'answer', part: 'cell-vents', gone: true }]));
  const key = [PACK, 'answer', 'cell-vents'];

  const first = await restoreBundle(store, backup, asking);
  expect(first.packs[0]).toMatchObject({ written: [], deletedHere: [key], broughtBack: [] });
  expect(await store.entriesOf(PACK)).toContainEqual(tombstone);

  const second = await restoreBundle(store, backup, bringing);
  expect(second.packs[0]).toMatchObject({ written: [key], deletedHere: [], broughtBack: [key] });
  const back = (await store.entriesOf(PACK)).find((entry) => entry.key[2] === 'cell-vents');
  expect(back).toEqual({ key, v: before?.v, at: back?.at, by: store.deviceId });
  expect((back?.at ?? '') > (tombstone?.at ?? '')).toBe(true);
  expect((await restoreBundle(store, backup, asking)).packs[0]).toMatchObject({ deletedHere: [], newerHere: [key] });
});

it('brings a deleted photo back with its bytes on a phone that never had them', async () => {
  const store = await benchOfPacks();
  const backup = await verifiedBackup(store);
  const photoId = (await store.entriesOf(OTHER_PACK)).find(({ key }) => key[1] === 'photo')?.key[2] ?? '';
  await written(store, change([{ subject: 'photo', part: photoId, gone: true }], { packId: OTHER_PACK }));
  const fresh = await storeOn(newPhone());
  await restoreBundle(fresh, await verifiedBackup(store), asking);
  expect(await fresh.photo(photoId)).toBeNull();
  const asked = await restoreBundle(fresh, backup, asking);
  expect(asked.packs[1]?.deletedHere).toEqual([[OTHER_PACK, 'photo', photoId]]);
  expect(await fresh.photo(photoId)).toBeNull();
  await restoreBundle(fresh, backup, bringing);
  expect(await fresh.photo(photoId)).toEqual(await store.photo(photoId));
});

it('applies a deletion of the bundle that is newer than the value here', async () => {
  const store = await benchOfPacks();
  const other = await storeOn(newPhone());
  await restoreBundle(other, await verifiedBackup(store), asking);
  await written(store, change([{ subject: 'answer', part: 'cell-vents', gone: true }]));
  await restoreBundle(other, await verifiedBackup(store), asking);
  expect(await other.entriesOf(PACK)).toEqual(await store.entriesOf(PACK));
});

it('draws later stamps past every stamp it has met, though this phone’s clock is a year behind', async () => {
  const backup = await verifiedBackup(await benchOfPacks());
  const phone = newPhone();
  phone.clock.nowMs -= 365 * 86_400_000;
  const behind = await storeOn(phone);
  await restoreBundle(behind, backup, asking);
  const [entry] = await written(behind, change([answer('cell-vents', 'failed')]));
  expect((entry?.at ?? '') > backup.manifest.newest).toBe(true);
});

it('stops at the pack that does not fit, keeps the one before, and takes the bytes it had brought away again', async () => {
  const backup = await verifiedBackup(await benchOfPacks());
  const fresh = await storeOn(newPhone());
  const put = IDBObjectStore.prototype.put;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value, key) {
    if (this.name === 'entries' && Array.isArray(key) && key[0] === OTHER_PACK) {
      throw new DOMException('no room', 'QuotaExceededError');
    }
    return put.call(this, value, key);
  });
  const report = await restoreBundle(fresh, backup, asking);
  vi.restoreAllMocks();
  expect(report.packs.map(({ packId }) => packId)).toEqual([PACK]);
  expect(report.stopped).toMatchObject({ packId: OTHER_PACK, problem: 'quotaFull' });
  expect(await fresh.entriesOf(OTHER_PACK)).toEqual([]);
  const photoId = backup.packs[1]?.entries.find(({ key }) => key[1] === 'photo')?.key[2] ?? '';
  expect(photoId).toHaveLength(64);
  expect(await fresh.photo(photoId)).toBeNull();
  expect((await restoreBundle(fresh, backup, asking)).stopped).toBeNull();
  expect(await fresh.photo(photoId)).not.toBeNull();
});
