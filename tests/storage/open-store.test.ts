import { IDBCursor, IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import { afterEach, expect, it, vi } from 'vitest';
import type { Migration } from '../../src/migrations/migrations.ts';
import { openStore } from '../../src/storage/open-store.ts';
import { otherTabsOver } from '../../src/storage/other-tabs.ts';
import { PACK } from '../record/made-entries.ts';
import { answer, cardOf, change, newPhone, openOn, storeOn, written } from './open-test-store.ts';

const lift: Migration = { to: 2, step: (entry) => ({ ...entry, v: { ...(entry.v as object), note: 'lifted' } }) };
afterEach(() => vi.restoreAllMocks());

/** Made-up ladders, so that these tests say the same whatever version the app has come to. */
const V1 = { steps: [], present: 1 };
const V2 = { steps: [lift], present: 2 };
const OWN_BYTES = /^[0-9a-f]{32}$/;

it('makes one random device id of 32 digits and keeps it over a reopen', async () => {
  const phone = newPhone();
  const first = await storeOn(phone);
  expect(first.deviceId).toMatch(OWN_BYTES);
  first.close();
  expect((await storeOn(phone)).deviceId).toBe(first.deviceId);
  expect((await storeOn(newPhone())).deviceId).not.toBe(first.deviceId);
});

it('says unavailable where there is no IndexedDB, and where opening throws', async () => {
  expect(await openStore({ indexedDB: undefined })).toMatchObject({ ok: false, problem: 'unavailable' });
  const refusing = new IDBFactory();
  refusing.open = () => {
    throw new DOMException('private window', 'SecurityError');
  };
  expect(await openStore({ indexedDB: refusing })).toMatchObject({ ok: false, problem: 'unavailable' });
});

it('notices that a database of 2 packs has vanished, until a new pack is written', async () => {
  const phone = newPhone();
  const store = await storeOn(phone);
  await written(store, change([answer('a', 'weak')]));
  const second = 'b'.repeat(32);
  await written(store, change([answer('a', 'weak')], { packId: second }));
  await written(store, change([], { packId: 'd'.repeat(32), card: cardOf('d'.repeat(32), true)([]) }));
  store.close();

  phone.indexedDB = new IDBFactory();
  phone.clock.nowMs += 1000;
  const vanished = { since: '2025-11-24T16:00:00.000Z', packCount: 2 };
  expect(await openOn(phone)).toMatchObject({ ok: true, vanished });
  expect(await openOn(phone)).toMatchObject({ ok: true, vanished });
  await written(await storeOn(phone), change([answer('a', 'weak')]));
  expect(await openOn(phone)).toMatchObject({ ok: true, vanished: null });
});

it('does not call a phone vanished on which every pack was erased, nor a new phone, nor one with a broken note', async () => {
  const phone = newPhone();
  expect(await openOn(phone)).toMatchObject({ vanished: null });
  const store = await storeOn(phone);
  await written(store, change([answer('a', 'weak')]));
  await store.erase(PACK);
  expect(await openOn(phone)).toMatchObject({ vanished: null });
  phone.marker.text = '{"half a no';
  expect(await openOn(phone)).toMatchObject({ vanished: null });
});

it('does not call a phone vanished when it stopped between erasing its last pack and noting it', async () => {
  const phone = newPhone();
  const store = await storeOn(phone);
  await written(store, change([answer('a', 'weak')]));
  const noted = phone.marker.text;
  await store.erase(PACK);
  phone.marker.text = noted;
  expect(await openOn(phone)).toMatchObject({ ok: true, vanished: null });
});

it('says nothing of a vanished database that held no pack', async () => {
  const phone = newPhone();
  const store = await storeOn(phone);
  await written(store, change([answer('a', 'weak')]));
  await store.erase(PACK);
  phone.indexedDB = new IDBFactory();
  expect(await openOn(phone)).toMatchObject({ ok: true, vanished: null });
});

it('refuses a database of schema version 2 when the app knows 1, and leaves it as it was', async () => {
  const phone = newPhone();
  const newer = await storeOn(phone, { ladder: V2 });
  await written(newer, change([answer('a', 'weak')]));
  newer.close();
  expect(await openOn(phone, { ladder: V1 })).toMatchObject({ ok: false, problem: 'newer' });
  const again = await storeOn(phone, { ladder: V2 });
  expect(await again.entriesOf(PACK)).toHaveLength(1);
});

it('lifts every entry of version 1 to 2 under the same stamps when it opens, and only once', async () => {
  const phone = newPhone();
  const old = await storeOn(phone, { ladder: V1 });
  const before = await written(old, change([answer('a', 'weak'), answer('b', 'sound')]));
  old.close();
  const counting = vi.fn(lift.step);
  const ladder = { steps: [{ to: 2, step: counting }], present: 2 };
  const lifted = await storeOn(phone, { ladder });
  expect(await lifted.entriesOf(PACK)).toEqual(before.map((entry) => ({ ...entry, v: { ...(entry.v as object), note: 'lifted' } }))); // biome-ignore format: one line
  lifted.close();
  await storeOn(phone, { ladder });
  expect(counting).toHaveBeenCalledTimes(2);
});

it('lifts an entry once that its step moves to a later key, and leaves nothing under the old one', async () => {
  const phone = newPhone();
  const old = await storeOn(phone, { ladder: V1 });
  await written(old, change([answer('a', 'weak')]));
  old.close();
  const move = vi.fn<Migration['step']>((entry) => ({ ...entry, key: [entry.key[0], 'answer', 'z'] }));
  const lifted = await storeOn(phone, { ladder: { steps: [{ to: 2, step: move }], present: 2 } });
  expect((await lifted.entriesOf(PACK)).map(({ key }) => key[2])).toEqual(['z']);
  expect(move).toHaveBeenCalledTimes(1);
});

it('lifts the steps to take back too: the earlier value comes back lifted, and a first one becomes a tombstone', async () => {
  const phone = newPhone();
  const old = await storeOn(phone, { ladder: V1 });
  await written(old, change([answer('a', 'weak')], { undoLabel: 'weak' }));
  await written(old, change([answer('a', 'sound')], { undoLabel: 'sound' }));
  old.close();
  const lifted = await storeOn(phone, { ladder: V2 });
  expect(await lifted.undoLabel(PACK)).toBe('sound');
  await lifted.undo(PACK, cardOf(PACK));
  expect((await lifted.entriesOf(PACK))[0]?.v).toEqual({
    kind: 'grade',
    grade: 'weak',
    evidence: 'seen',
    note: 'lifted',
  });
  expect(await lifted.undoLabel(PACK)).toBe('weak');
  await lifted.undo(PACK, cardOf(PACK));
  expect(await lifted.entriesOf(PACK)).toMatchObject([{ v: null, gone: true }]);
  expect(await lifted.undoLabel(PACK)).toBeNull();
});

it('leaves the database untouched when only a step to take back cannot be lifted', async () => {
  const phone = newPhone();
  const old = await storeOn(phone, { ladder: V1 });
  await written(old, change([answer('a', 'weak')], { undoLabel: 'weak' }));
  const before = await written(old, change([answer('a', 'sound')], { undoLabel: 'sound' }));
  old.close();
  const step: Migration['step'] = (entry) => {
    if ((entry.v as { grade?: string }).grade === 'weak') throw new Error('cannot read weak');
    return entry;
  };
  const update = vi.spyOn(IDBCursor.prototype, 'update');
  expect(await openOn(phone, { ladder: { steps: [{ to: 2, step }], present: 2 } })).toMatchObject({
    ok: false,
    problem: 'migrationFailed',
    detail: expect.stringContaining('cannot read weak'),
  });
  expect(update).not.toHaveBeenCalled();
  const asBefore = await storeOn(phone, { ladder: V1 });
  expect([await asBefore.entriesOf(PACK), await asBefore.undoLabel(PACK)]).toEqual([before, 'sound']);
});

it('leaves the database untouched, at version 1, when the step fails on the second of two entries', async () => {
  const phone = newPhone();
  const old = await storeOn(phone, { ladder: V1 });
  const before = await written(old, change([answer('a', 'weak'), answer('b', 'sound')], { undoLabel: 'a and b' }));
  old.close();
  const failing: Migration = {
    to: 2,
    step: (entry) => {
      if (entry.key[2] === 'b') throw new Error('cannot read b');
      return { ...entry, v: 'changed' };
    },
  };
  const clear = vi.spyOn(IDBObjectStore.prototype, 'clear');
  const opened = await openOn(phone, { ladder: { steps: [failing], present: 2 } });
  expect(clear).not.toHaveBeenCalled();
  expect(opened).toMatchObject({
    ok: false,
    problem: 'migrationFailed',
    detail: expect.stringContaining('cannot read b'),
  });
  const asBefore = await storeOn(phone, { ladder: V1 });
  expect(await asBefore.entriesOf(PACK)).toEqual(before);
  expect(await asBefore.undoLabel(PACK)).toBe('a and b');
});

it('closes when a newer tab asks for the database: later writes are "old", reads reject', async () => {
  const phone = newPhone();
  const old = await storeOn(phone, { ladder: V1 });
  await written(old, change([answer('a', 'weak')]));
  await storeOn(phone, { ladder: V2 });
  expect(await old.write(change([answer('a', 'sound')]))).toMatchObject({ ok: false, problem: 'old' });
  await expect(old.entriesOf(PACK)).rejects.toThrow('closed (old)');
});

it('says closed for a write after close', async () => {
  const store = await storeOn(newPhone());
  store.close();
  expect(await store.write(change([]))).toMatchObject({ ok: false, problem: 'closed' });
});

it('tells another tab which pack was written, and stops when asked', async () => {
  const phone = newPhone();
  const [here, there] = [otherTabsOver('tabs-under-test'), otherTabsOver('tabs-under-test')];
  const writing = await storeOn(phone, { otherTabs: here });
  const listening = await storeOn(phone, { otherTabs: there });
  const heard: string[] = [];
  const stop = listening.onOtherTab((packId) => heard.push(packId));
  await written(writing, change([answer('a', 'weak')]));
  await vi.waitFor(() => expect(heard).toEqual([PACK]));
  stop();
  await written(writing, change([answer('a', 'sound')]));
  await new Promise((resolve) => setTimeout(resolve, 50));
  expect(heard).toEqual([PACK]);
  writing.close();
  listening.close();
});

it('works without BroadcastChannel', async () => {
  vi.stubGlobal('BroadcastChannel', undefined);
  const tabs = otherTabsOver('none');
  const stop = tabs.listen(() => {});
  expect(() => {
    tabs.tell(PACK);
    stop();
    tabs.close();
  }).not.toThrow();
  vi.unstubAllGlobals();
});
