import { expect, it } from 'vitest';
import type { Migration } from '../../src/migrations/migrations.ts';
import { PACK } from '../record/made-entries.ts';
import { answer, change, newPhone, openOn, storeOn, written } from './open-test-store.ts';

const LATER: { steps: Migration[]; present: number } = { steps: [], present: 99 };

function deleted(factory: IDBFactory): Promise<void> {
  return new Promise((resolve, reject) => {
    const request = factory.deleteDatabase('underlid');
    request.onsuccess = () => resolve();
    request.onerror = () => reject(request.error);
  });
}

it('says at once, without any write, that a newer Underlid has taken the database: old', async () => {
  const phone = newPhone();
  const old = await storeOn(phone);
  const said: string[] = [];
  old.onClosed((because) => said.push(because));
  await storeOn(phone, { ladder: LATER });
  expect(said).toEqual(['old']);
});

it('says closed, not old, when the database is deleted under it, and refuses the next write', async () => {
  const phone = newPhone();
  const store = await storeOn(phone);
  await written(store, change([answer('a', 'weak')]));
  const said: string[] = [];
  store.onClosed((because) => said.push(because));
  await deleted(phone.indexedDB);
  expect(said).toEqual(['closed']);
  expect(await store.write(change([answer('a', 'sound')]))).toMatchObject({ ok: false, problem: 'closed' });
  await expect(store.keep('draft', 'x')).rejects.toThrow('closed (closed)');
});

it('notices 1 pack gone, and since when, at the first opening after the database was deleted', async () => {
  const phone = newPhone();
  const store = await storeOn(phone);
  await written(store, change([answer('a', 'weak')]));
  await deleted(phone.indexedDB);
  const again = await openOn(phone);
  expect(again).toMatchObject({
    ok: true,
    vanished: { packCount: 1, since: new Date(phone.clock.nowMs).toISOString() },
  });
  expect(again.ok && (await again.store.entriesOf(PACK))).toEqual([]);
});
