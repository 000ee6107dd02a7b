import { IDBFactory } from 'fake-indexeddb';
import { expect, it } from 'vitest';
import { readMarker } from '../../src/storage/outside-marker.ts';
import type { OpenResult } from '../../src/storage/store.ts';
import { PACK } from '../record/made-entries.ts';
import { change, newPhone, openOn, type Phone, storeOn, written } from './open-test-store.ts';

const FILE = { fileName: 'underlid-2025-11-24-abcdef.zip', packCount: 1 };
/** The phone's clock in these tests: 1 764 000 000 s, `date -u -d @1764000000`. */
const NOTE = { ...FILE, at: '2025-11-24T16:00:00.000Z' };

async function withPack(phone: Phone) {
  const store = await storeOn(phone);
  await written(store, change([{ subject: 'pack', part: 'made', v: {} }]));
  return store;
}

/** The browser has thrown the database away; the note outside is still there. */
async function afterLoss(phone: Phone): Promise<Extract<OpenResult, { ok: true }>> {
  phone.indexedDB = new IDBFactory();
  const opened = await openOn(phone);
  if (!opened.ok) throw new Error(opened.detail);
  return opened;
}

it('keeps name, time and pack count of the last backup in the database and in the note outside', async () => {
  const phone = newPhone();
  const store = await withPack(phone);
  expect(await store.lastBackup()).toBeNull();
  await store.noteBackup([], FILE);
  expect(await store.lastBackup()).toEqual(NOTE);
  expect(JSON.parse(phone.marker.text ?? '')).toMatchObject({ packCount: 1, lastBackup: NOTE });
  phone.marker.text = null;
  expect(await (await storeOn(phone)).lastBackup()).toEqual(NOTE);
  expect(JSON.parse(phone.marker.text ?? '')).toMatchObject({ lastBackup: NOTE });
  await store.noteBackup([]);
  expect(await store.lastBackup()).toEqual(NOTE);
});

it('names the last backup when the database has vanished, and goes on knowing it in the new one', async () => {
  const phone = newPhone();
  await (await withPack(phone)).noteBackup([], FILE);
  const { vanished, store } = await afterLoss(phone);
  expect(vanished).toEqual({ since: NOTE.at, packCount: 1, lastBackup: NOTE });
  expect(await store.lastBackup()).toEqual(NOTE);
  await written(store, change([{ subject: 'pack', part: 'made', v: {} }]));
  expect(await store.lastBackup()).toEqual(NOTE);
  expect((await afterLoss(phone)).vanished).toMatchObject({ packCount: 1, lastBackup: NOTE });
});

it('says that there was none when no backup was ever handed over', async () => {
  const phone = newPhone();
  await withPack(phone);
  expect((await afterLoss(phone)).vanished).toMatchObject({ packCount: 1, lastBackup: null });
});

it.each<[string, unknown]>([
  ['of an earlier version, without it', undefined],
  ['with one that is a word', 'yesterday'],
  ['with one without a name', { packCount: 1, at: NOTE.at }],
  ['with one of no day', { ...FILE, at: 'yesterday' }],
])('still reads a note %s, and then knows of no backup', (_, lastBackup) => {
  const note = { deviceId: PACK, packCount: 2, at: NOTE.at };
  const marker = { read: () => JSON.stringify({ ...note, lastBackup }), write: () => {} };
  expect(readMarker(marker)).toEqual({ ...note, lastBackup: null });
});
