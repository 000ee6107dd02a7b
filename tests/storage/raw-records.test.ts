import { expect, it } from 'vitest';
import { rawRecords } from '../../src/storage/raw-records.ts';
import { answer, change, newPhone, openOn, storeOn, written } from './open-test-store.ts';

it('hands over 2 entries and 1 checklist of records newer than the app, and leaves them at their version', async () => {
  const phone = newPhone();
  const newer = await storeOn(phone, { ladder: { steps: [], present: 98 } });
  const definition = { sha256: 'f'.repeat(64), text: '{"id":"later"}' };
  const entries = await written(newer, change([answer('a', 'weak'), answer('b', 'sound')], { definition }));
  newer.close();
  expect(await openOn(phone)).toMatchObject({ ok: false, problem: 'newer' });
  const { text, entryCount } = await rawRecords(phone.indexedDB, 'underlid');
  expect(entryCount).toBe(2);
  expect(JSON.parse(text)).toEqual({
    format: 'underlid-raw-records',
    databaseVersion: 98_004,
    entries,
    definitions: { [definition.sha256]: definition.text },
  });
  const again = await storeOn(phone, { ladder: { steps: [], present: 98 } });
  expect(await again.entriesOf(entries[0]?.key[0] ?? '')).toEqual(entries);
});

it('hands over what a failing step could not lift, as it lay', async () => {
  const phone = newPhone();
  const old = await storeOn(phone, { ladder: { steps: [], present: 1 } });
  const entries = await written(old, change([answer('a', 'weak')]));
  old.close();
  const step = () => {
    throw new Error('cannot lift');
  };
  const opened = await openOn(phone, { ladder: { steps: [{ to: 2, step }], present: 2 } });
  expect(opened).toMatchObject({ ok: false, problem: 'migrationFailed' });
  const { text } = await rawRecords(phone.indexedDB, 'underlid');
  expect(JSON.parse(text)).toMatchObject({ databaseVersion: 1004, entries });
});

it('makes no database where there is none', async () => {
  const phone = newPhone();
  await expect(rawRecords(phone.indexedDB, 'underlid')).rejects.toBeDefined();
  expect(await phone.indexedDB.databases()).toEqual([]);
});
