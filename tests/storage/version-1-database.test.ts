import { expect, it } from 'vitest';
import { OTHER_PACK } from '../record/made-entries.ts';
import { answer, bytesOf, cardOf, change, newPhone, openOn, storeOn, written } from './open-test-store.ts';
import {
  everyRow,
  layOutVersion1,
  type Rows,
  VERSION_1_CLOCK,
  VERSION_1_DEVICE,
  version1Rows,
} from './version-1-database.ts';

async function version1Phone(rows: Rows = version1Rows()) {
  const phone = newPhone();
  await layOutVersion1(phone, rows);
  return phone;
}

const sorted = (rows: Rows): Rows =>
  Object.fromEntries(
    Object.entries(rows).map(([name, list]) => [name, list.toSorted(([a], [b]) => (String(a) < String(b) ? -1 : 1))]),
  );

it('opens a database of version 1 as 2002, keeps every row of its ten stores, and gains an empty one for logs', async () => {
  const phone = await version1Phone();
  const before = version1Rows();
  expect(Object.values(before).map((list) => list.length)).toEqual([365, 2, 17, 17, 0, 1, 1, 17, 1, 2]);
  const opened = await openOn(phone);
  if (!opened.ok) throw new Error(opened.detail);
  opened.store.close();
  const { version, rows } = await everyRow(phone);
  expect(version).toBe(2002);
  expect(sorted(rows)).toEqual(sorted({ ...before, logs: [] }));
});

it('goes on with it as the same phone: device, clock, way back, photos, and now a log', async () => {
  const phone = await version1Phone();
  const store = await storeOn(phone);
  const { cards, photos, undo } = version1Rows();
  const packId = String(cards?.[0]?.[0]);
  const [[[undoPack = ''] = []] = []] = (undo ?? []) as [string[], unknown][];
  expect(store.deviceId).toBe(VERSION_1_DEVICE);
  expect(await store.undoLabel(undoPack)).toBe('measured again');
  expect(await store.undo(undoPack, cardOf(undoPack))).toMatchObject({ ok: true, entries: [{ gone: true }] });
  const [photoId, photo] = photos?.[0] ?? [];
  expect(await store.photo(String(photoId))).toEqual(photo);

  const [entry] = await written(store, change([answer('bus-bars', 'weak')], { packId }));
  expect((entry?.at ?? '') > VERSION_1_CLOCK).toBe(true);
  const sha256 = '7'.repeat(64);
  const content = { type: 'text/plain', bytes: bytesOf(100) };
  const log = { subject: 'log', part: sha256, v: { name: 'gentle.csv', byteCount: 100, made: null } };
  await written(store, change([log], { packId, photos: [{ sha256, shelf: 'logs', content }] }));
  expect(await store.log(sha256)).toEqual(content);
});

it('closes the tab of version 1 that still has it open, rather than wait for it', async () => {
  const phone = await version1Phone();
  let told = 0;
  const old = await new Promise<IDBDatabase>((resolve) => {
    const request = phone.indexedDB.open('underlid', 1001);
    request.onsuccess = () => resolve(request.result);
  });
  old.onversionchange = () => {
    told += 1;
    old.close();
  };
  expect(await openOn(phone)).toMatchObject({ ok: true });
  expect(told).toBe(1);
});

it('is then refused by version 1, which asks for 1001', async () => {
  const phone = await version1Phone();
  (await storeOn(phone)).close();
  const problem = await new Promise((resolve) => {
    const request = phone.indexedDB.open('underlid', 1001);
    request.onerror = () => resolve(request.error?.name);
    request.onsuccess = () => resolve('opened');
  });
  expect(problem).toBe('VersionError');
});

it('gains the store for logs without a step where only the layout is older: 1001 becomes 1002, way back kept', async () => {
  const phone = await version1Phone();
  const opened = await openOn(phone, { ladder: { steps: [], present: 1 } });
  if (!opened.ok) throw new Error(opened.detail);
  opened.store.close();
  const { version, rows } = await everyRow(phone);
  expect([version, rows.logs, rows.undo?.length]).toEqual([1002, [], 1]);
});

it('opens an empty database of version 1, and one made new, with the same eleven stores', async () => {
  const empty = Object.fromEntries(Object.keys(version1Rows()).map((name) => [name, []]));
  const old = await version1Phone(empty);
  (await storeOn(old)).close();
  const fresh = newPhone();
  const store = await storeOn(fresh);
  await written(store, change([answer('a', 'weak')], { packId: OTHER_PACK }));
  store.close();
  const names = async (phone: typeof old) => Object.keys((await everyRow(phone)).rows);
  expect(await names(old)).toHaveLength(11);
  expect(await names(old)).toEqual(await names(fresh));
});
