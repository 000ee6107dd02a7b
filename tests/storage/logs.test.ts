import { expect, it } from 'vitest';
import { OTHER_PACK, PACK, PHOTO, photoValue } from '../record/made-entries.ts';
import { bytesOf, cardOf, change, newPhone, storeOn, written } from './open-test-store.ts';

const LOG = '7'.repeat(64);
const SECOND_LOG = '8'.repeat(64);
const csv = { type: 'text/plain', bytes: bytesOf(300) };

function withLog(packId: string, sha256: string, { demo = false, content = csv } = {}) {
  const v = { name: 'gentle.csv', byteCount: content.bytes.byteLength, made: null };
  const card = cardOf(packId, demo)([]);
  return change([{ subject: 'log', part: sha256, v }], { packId, card, photos: [{ sha256, shelf: 'logs', content }] });
}

it('keeps the 300 bytes of a log over a reopen, apart from photos, and has none under another hash', async () => {
  const phone = newPhone();
  const store = await storeOn(phone);
  await written(store, withLog(PACK, LOG));
  store.close();
  const again = await storeOn(phone);
  expect(await again.log(LOG)).toEqual(csv);
  expect([await again.log(SECOND_LOG), await again.photo(LOG), await again.photo(LOG, 'thumbs')]).toEqual([
    null,
    null,
    null,
  ]);
});

it('never writes other bytes over those that lie under a hash', async () => {
  const store = await storeOn(newPhone());
  await written(store, withLog(PACK, LOG));
  await written(store, withLog(PACK, LOG, { content: { type: 'text/plain', bytes: bytesOf(300, 9) } }));
  expect(await store.log(LOG)).toEqual(csv);
});

it('keeps a log that a phone calls a spreadsheet or a page as plain text', async () => {
  const store = await storeOn(newPhone());
  await written(store, withLog(PACK, LOG, { content: { ...csv, type: 'application/vnd.ms-excel' } }));
  await written(store, withLog(PACK, SECOND_LOG, { content: { ...csv, type: 'text/html' } }));
  expect([await store.log(LOG), await store.log(SECOND_LOG)]).toEqual([csv, csv]);
});

it('takes a log of 64 MB and refuses one byte more, with nothing written', async () => {
  const store = await storeOn(newPhone());
  const sized = (byteCount: number) => ({ content: { type: 'text/plain', bytes: new ArrayBuffer(byteCount) } });
  const most = 64 * 1024 * 1024;
  expect(await store.write(withLog(PACK, LOG, sized(most + 1)))).toMatchObject({
    ok: false,
    problem: 'refused',
    detail: expect.stringContaining('at most 67108864 bytes, got 67108865'),
  });
  expect([await store.entriesOf(PACK), await store.log(LOG)]).toEqual([[], null]);
  await written(store, withLog(PACK, LOG, sized(most)));
  expect((await store.log(LOG))?.bytes.byteLength).toBe(most);
});

it('writes the same length as a photo without asking: the limit is of logs', async () => {
  const store = await storeOn(newPhone());
  const content = { type: 'image/jpeg', bytes: new ArrayBuffer(64 * 1024 * 1024 + 1) };
  const photo = { subject: 'photo', part: PHOTO, v: photoValue() };
  await written(store, change([photo], { photos: [{ sha256: PHOTO, shelf: 'photos', content }] }));
});

it('erases the log of one pack, but not the one another pack uses', async () => {
  const store = await storeOn(newPhone());
  await written(store, withLog(PACK, LOG));
  await written(store, withLog(PACK, SECOND_LOG));
  await written(store, withLog(OTHER_PACK, LOG));
  await store.erase(PACK);
  expect([await store.log(LOG), await store.log(SECOND_LOG)]).toEqual([csv, null]);
  await store.erase(OTHER_PACK);
  expect(await store.log(LOG)).toBeNull();
});

it('keeps the bytes of a deleted log until its pack is erased, so that undo brings it back whole', async () => {
  const store = await storeOn(newPhone());
  await written(store, withLog(PACK, LOG));
  await written(store, change([{ subject: 'log', part: LOG, gone: true }], { undoLabel: 'log deleted' }));
  expect(await store.log(LOG)).toEqual(csv);
  await store.undo(PACK, cardOf(PACK));
  expect(await store.entriesOf(PACK)).toMatchObject([{ v: { name: 'gentle.csv', byteCount: 300 } }]);
  await written(store, change([{ subject: 'log', part: LOG, gone: true }]));
  await store.erase(PACK);
  expect(await store.log(LOG)).toBeNull();
});

it('counts 2 logs in no backup, 1 after the other went into one; a deleted one, a demo pack and photos do not count', async () => {
  const store = await storeOn(newPhone());
  const demoPack = 'd'.repeat(32);
  await written(store, withLog(PACK, LOG));
  await written(store, withLog(OTHER_PACK, LOG));
  await written(store, withLog(PACK, SECOND_LOG));
  await written(store, withLog(PACK, '9'.repeat(64)));
  await written(store, change([{ subject: 'log', part: '9'.repeat(64), gone: true }]));
  await written(store, withLog(demoPack, '6'.repeat(64), { demo: true }));
  await written(store, change([{ subject: 'photo', part: PHOTO, v: photoValue() }]));
  expect([await store.logsInNoBackup(), await store.photosInNoBackup()]).toEqual([2, 1]);
  await store.noteBackup([LOG]);
  expect([await store.logsInNoBackup(), await store.photosInNoBackup()]).toEqual([1, 1]);
});
