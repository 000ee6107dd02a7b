import { expect, it } from 'vitest';
import { OTHER_PACK, PACK, PHOTO, photoValue, voiceValue } from '../record/made-entries.ts';
import { voiceBytes } from './made-voice.ts';
import { bytesOf, cardOf, change, newPhone, storeOn, written } from './open-test-store.ts';

const VOICE = '7'.repeat(64);
const SECOND_VOICE = '8'.repeat(64);
const webm = { type: 'audio/webm', bytes: voiceBytes('audio/webm') };

function withVoice(packId: string, sha256: string, { demo = false, content = webm } = {}) {
  const v = { ...voiceValue(), byteCount: Math.min(content.bytes.byteLength || 1, 1000), made: null };
  const card = cardOf(packId, demo)([]);
  return change([{ subject: 'voice', part: sha256, v }], {
    packId,
    card,
    photos: [{ sha256, shelf: 'voices', content }],
  });
}

it('keeps the 300 bytes of a voice note over a reopen, apart from logs, and has none under another hash', async () => {
  const phone = newPhone();
  const store = await storeOn(phone);
  await written(store, withVoice(PACK, VOICE));
  store.close();
  const again = await storeOn(phone);
  expect(await again.voice(VOICE)).toEqual(webm);
  expect([await again.voice(SECOND_VOICE), await again.log(VOICE), await again.photo(VOICE)]).toEqual([
    null,
    null,
    null,
  ]);
});

it('keeps it as what its bytes say, whatever the recorder called it', async () => {
  const store = await storeOn(newPhone());
  await written(store, withVoice(PACK, VOICE, { content: { ...webm, type: 'audio/webm;codecs=opus' } }));
  const mp4 = voiceBytes('audio/mp4');
  await written(store, withVoice(PACK, SECOND_VOICE, { content: { type: 'text/html', bytes: mp4 } }));
  expect([await store.voice(VOICE), await store.voice(SECOND_VOICE)]).toEqual([
    webm,
    { type: 'audio/mp4', bytes: mp4 },
  ]);
});

it.each([
  ['10 MB and one byte', voiceBytes('audio/ogg', 10_485_761), 'at most 10485760 bytes, got 10485761'],
  ['a page of HTML', new TextEncoder().encode('<html>').buffer, 'must be WebM, MP4 or Ogg'],
  ['no bytes', new ArrayBuffer(0), 'must be WebM, MP4 or Ogg'],
])('refuses %s, with nothing written', async (_, bytes, detail) => {
  const store = await storeOn(newPhone());
  expect(await store.write(withVoice(PACK, VOICE, { content: { type: 'audio/ogg', bytes } }))).toMatchObject({
    ok: false,
    problem: 'refused',
    detail: expect.stringContaining(detail),
  });
  expect([await store.entriesOf(PACK), await store.voice(VOICE)]).toEqual([[], null]);
});

it('takes one of 10 MB', async () => {
  const store = await storeOn(newPhone());
  await written(store, withVoice(PACK, VOICE, { content: { type: '', bytes: voiceBytes('audio/ogg', 10_485_760) } }));
  expect((await store.voice(VOICE))?.bytes.byteLength).toBe(10_485_760);
});

it('erases the voice note of one pack, but not the one another pack uses', async () => {
  const store = await storeOn(newPhone());
  await written(store, withVoice(PACK, VOICE));
  await written(store, withVoice(PACK, SECOND_VOICE));
  await written(store, withVoice(OTHER_PACK, VOICE));
  await store.erase(PACK);
  expect([await store.voice(VOICE), await store.voice(SECOND_VOICE)]).toEqual([webm, null]);
  await store.erase(OTHER_PACK);
  expect(await store.voice(VOICE)).toBeNull();
});

it('keeps the bytes of a deleted one until its pack is erased, so that undo brings it back whole', async () => {
  const store = await storeOn(newPhone());
  await written(store, withVoice(PACK, VOICE));
  await written(store, change([{ subject: 'voice', part: VOICE, gone: true }], { undoLabel: 'voice note deleted' }));
  expect(await store.voice(VOICE)).toEqual(webm);
  await store.undo(PACK, cardOf(PACK));
  expect(await store.entriesOf(PACK)).toMatchObject([{ v: { byteCount: 300, durationS: 8.5 } }]);
  await written(store, change([{ subject: 'voice', part: VOICE, gone: true }]));
  await store.erase(PACK);
  expect(await store.voice(VOICE)).toBeNull();
});

it('counts 2 in no backup, 1 after the other went into one; a deleted one, a demo pack, photos and logs do not count', async () => {
  const store = await storeOn(newPhone());
  const demoPack = 'd'.repeat(32);
  await written(store, withVoice(PACK, VOICE));
  await written(store, withVoice(OTHER_PACK, VOICE));
  await written(store, withVoice(PACK, SECOND_VOICE));
  await written(store, withVoice(PACK, '9'.repeat(64)));
  await written(store, change([{ subject: 'voice', part: '9'.repeat(64), gone: true }]));
  await written(store, withVoice(demoPack, '6'.repeat(64), { demo: true }));
  await written(store, change([{ subject: 'photo', part: PHOTO, v: photoValue() }]));
  const log = { name: 'run.csv', byteCount: 30, made: null };
  const content = { type: 'text/plain', bytes: bytesOf(30) };
  await written(store, change([{ subject: 'log', part: PHOTO, v: log }], { photos: [{ sha256: PHOTO, shelf: 'logs', content }] })); // biome-ignore format: one line
  const counts = async () => [await store.voicesInNoBackup(), await store.photosInNoBackup(), await store.logsInNoBackup()]; // biome-ignore format: one line
  expect(await counts()).toEqual([2, 1, 1]);
  await store.noteBackup([VOICE]);
  expect(await counts()).toEqual([1, 1, 1]);
});
