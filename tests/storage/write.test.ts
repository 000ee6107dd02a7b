import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, expect, it, vi } from 'vitest';
import { OTHER_PACK, PACK, PHOTO, photoValue, SECOND_PHOTO } from '../record/made-entries.ts';
import { answer, bytesOf, cardOf, change, newPhone, storeOn, written } from './open-test-store.ts';

afterEach(() => vi.restoreAllMocks());

const jpeg = (seed: number) => ({ type: 'image/jpeg', bytes: bytesOf(1000, seed) });

it('writes an entry, its card, its photo and its definition, and finds all four after a reopen', async () => {
  const phone = newPhone();
  const store = await storeOn(phone);
  const [made, photo] = await written(
    store,
    change(
      [
        { subject: 'nameplate', part: 'name', v: 'Wren 24', why: 'read again' },
        { subject: 'photo', part: PHOTO, v: { ...photoValue(), made: null } },
      ],
      {
        photos: [{ sha256: PHOTO, shelf: 'photos', content: jpeg(1) }, { sha256: PHOTO, shelf: 'thumbs', content: jpeg(2) }],
        definition: { sha256: 'f'.repeat(64), text: '{"id":"lfp-drop-in"}' },
      },
    ),
  ); // biome-ignore format: compact
  store.close();
  const again = await storeOn(phone);
  const stamp = (counter: number) => `001764000000000.00000${counter}.${store.deviceId}`;
  expect(await again.entriesOf(PACK)).toEqual([
    { key: [PACK, 'nameplate', 'name'], v: 'Wren 24', why: 'read again', at: stamp(0), by: store.deviceId },
    { key: [PACK, 'photo', PHOTO], v: { ...photoValue(), made: stamp(1) }, at: stamp(1), by: store.deviceId },
  ]);
  expect([made?.at, photo?.at]).toEqual([stamp(0), stamp(1)]);
  expect(await again.cards()).toEqual([{ ...cardOf(PACK)([]), changedAtMs: 1_764_000_000_000 }]);
  expect(await again.photo(PHOTO)).toEqual(jpeg(1));
  expect(await again.photo(PHOTO, 'thumbs')).toEqual(jpeg(2));
  expect(await again.photo(SECOND_PHOTO)).toBeNull();
  expect(await again.definitionText('f'.repeat(64))).toBe('{"id":"lfp-drop-in"}');
});

it('keeps the entries of packs apart and deletes by tombstone', async () => {
  const store = await storeOn(newPhone());
  await written(store, change([answer('a', 'weak')]));
  await written(store, change([answer('a', 'sound')], { packId: OTHER_PACK }));
  await written(store, change([{ subject: 'answer', part: 'a', gone: true }]));
  expect(await store.entriesOf(PACK)).toMatchObject([{ v: null, gone: true }]);
  expect(await store.entriesOf(OTHER_PACK)).toMatchObject([{ v: { grade: 'sound' } }]);
});

it('draws rising stamps though the clock is set back one day, and over a reopen', async () => {
  const phone = newPhone();
  const store = await storeOn(phone);
  const [first] = await written(store, change([answer('a', 'weak')]));
  phone.clock.nowMs -= 86_400_000;
  const [second] = await written(store, change([answer('a', 'sound')]));
  store.close();
  const [third] = await written(await storeOn(phone), change([answer('a', 'passable')]));
  const stamps = [first?.at, second?.at, third?.at];
  expect(stamps).toEqual([...stamps].sort());
  expect(new Set(stamps).size).toBe(3);
});

it('draws 40 different stamps in two tabs that write at the same moment', async () => {
  const phone = newPhone();
  const [left, right] = [await storeOn(phone), await storeOn(phone)];
  const results = await Promise.all(
    Array.from({ length: 40 }, (_, i) => (i % 2 === 0 ? left : right).write(change([answer(`a${i}`, 'weak')]))),
  );
  expect(new Set(results.map((result) => (result.ok ? result.at : 'failed'))).size).toBe(40);
  expect(await left.entriesOf(PACK)).toHaveLength(40);
});

it.each([
  ['the card', 'cards'],
  ['the photo', 'photos'],
  ['the second entry', 'entries'],
  ['the undo step', 'undo'],
])('writes nothing at all when putting %s fails', async (_, failingStore) => {
  const store = await storeOn(newPhone());
  await written(store, change([answer('a', 'weak')]));
  const before = [await store.entriesOf(PACK), await store.cards(), await store.undoLabel(PACK)];
  const put = IDBObjectStore.prototype.put;
  let entryPuts = 0;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value, key) {
    if (this.name === 'entries') entryPuts += 1;
    if (this.name === failingStore && (failingStore !== 'entries' || entryPuts === 2)) throw new Error('disk trouble');
    return put.call(this, value, key);
  });
  const result = await store.write(
    change([answer('a', 'sound'), answer('b', 'sound')], {
      photos: [{ sha256: PHOTO, shelf: 'photos', content: jpeg(1) }],
      undoLabel: 'two answers',
    }),
  );
  vi.restoreAllMocks();
  expect(result).toMatchObject({ ok: false, problem: 'failed', detail: expect.stringContaining('disk trouble') });
  expect([await store.entriesOf(PACK), await store.cards(), await store.undoLabel(PACK)]).toEqual(before);
  expect(await store.photo(PHOTO)).toBeNull();
});

it('reports a full disk as quotaFull and keeps what was there', async () => {
  const store = await storeOn(newPhone());
  await written(store, change([answer('a', 'weak')]));
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('no room', 'QuotaExceededError');
  });
  expect(await store.write(change([answer('a', 'sound')]))).toMatchObject({ ok: false, problem: 'quotaFull' });
  vi.restoreAllMocks();
  expect(await store.entriesOf(PACK)).toMatchObject([{ v: { grade: 'weak' } }]);
});

it('resolves a write only after its transaction has completed', async () => {
  const store = await storeOn(newPhone());
  const order: string[] = [];
  const transaction = IDBDatabase.prototype.transaction;
  vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, names, mode, options) {
    const tx = transaction.call(this, names, mode, options);
    if (mode === 'readwrite') {
      expect(options).toEqual({ durability: 'strict' });
      tx.addEventListener('complete', () => order.push('completed'));
    }
    return tx;
  });
  await store.write(change([answer('a', 'weak')])).then(() => order.push('resolved'));
  expect(order).toEqual(['completed', 'resolved']);
});

it('says a change is written, and a pack erased, though the note outside the database was refused', async () => {
  const refusing = { read: () => null, write: () => { throw new Error('no room'); } }; // biome-ignore format: one line
  const warn = vi.spyOn(console, 'warn').mockImplementation(() => {});
  const store = await storeOn({ ...newPhone(), marker: { ...refusing, text: null } });
  expect(await store.write(change([answer('a', 'weak')]))).toMatchObject({ ok: true });
  expect(await store.entriesOf(PACK)).toHaveLength(1);
  await store.erase(PACK);
  expect(await store.cards()).toEqual([]);
  expect(warn).toHaveBeenCalledTimes(2);
});

it('refuses a value that does not pass its schema, naming it, and a card of another pack', async () => {
  const store = await storeOn(newPhone());
  const bad = await store.write(change([answer('b', 'sound'), answer('a', 'perfect')]));
  expect(bad).toMatchObject({ ok: false, problem: 'refused', detail: expect.stringContaining('answer/a must pass') });
  const astray = await store.write(change([answer('b', 'sound')], { card: cardOf(OTHER_PACK)([]) }));
  expect(astray).toMatchObject({ ok: false, problem: 'refused', detail: expect.stringContaining('card') });
  expect(await store.entriesOf(PACK)).toEqual([]);
});

it('leaves undefined members out and makes half an emoji U+FFFD, so that every stored value can be restored', async () => {
  const store = await storeOn(newPhone());
  const [entry] = await written(
    store,
    change([{ subject: 'answer', part: 'a', v: { kind: 'open', note: 'lifted \ud83d', extra: undefined } }]),
  );
  expect(entry?.v).toStrictEqual({ kind: 'open', note: 'lifted \ufffd' });
});

it('does not read other packs for entriesOf, and one answer writes 4 rows: entry, card, clock, undo step', async () => {
  const store = await storeOn(newPhone());
  for (const packId of [PACK, OTHER_PACK]) await written(store, change([answer('a', 'weak')], { packId }));
  const getAll = vi.spyOn(IDBObjectStore.prototype, 'getAll');
  const put = vi.spyOn(IDBObjectStore.prototype, 'put');
  await written(store, change([answer('a', 'sound')], { undoLabel: 'a' }));
  expect(put).toHaveBeenCalledTimes(4);
  expect(getAll).not.toHaveBeenCalled();
  await store.entriesOf(PACK);
  expect(getAll).toHaveBeenCalledTimes(1);
  expect(getAll.mock.calls[0]?.[0]).toMatchObject({ lower: [PACK], upper: [PACK, []] });
});

it('keeps settings apart from records', async () => {
  const store = await storeOn(newPhone());
  expect(await store.kept('theme')).toBeNull();
  await store.keep('theme', 'paper');
  expect(await store.kept<string>('theme')).toBe('paper');
});
