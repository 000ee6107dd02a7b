import { expect, it } from 'vitest';
import type { Change } from '../../src/storage/store.ts';
import { OTHER_PACK, PACK, PHOTO, photoValue, SECOND_PHOTO } from '../record/made-entries.ts';
import { answer, bytesOf, cardOf, change, newPhone, storeOn, written } from './open-test-store.ts';

const ORIGINAL = 'e'.repeat(64);
const content = { type: 'image/jpeg', bytes: bytesOf(500) };

function withPhoto(packId: string, sha256: string, more: Partial<Change> = {}): Change {
  return change([{ subject: 'photo', part: sha256, v: { ...photoValue(), keptOriginal: ORIGINAL } }], {
    packId,
    photos: [
      { sha256, shelf: 'photos', content },
      { sha256, shelf: 'thumbs', content },
      { sha256: ORIGINAL, shelf: 'originals', content },
    ],
    ...more,
  });
}

it('takes every row of a pack, but not the photo and original another pack uses', async () => {
  const store = await storeOn(newPhone());
  await written(store, withPhoto(PACK, PHOTO, { undoLabel: 'photo' }));
  await written(store, withPhoto(PACK, SECOND_PHOTO));
  await written(store, withPhoto(OTHER_PACK, PHOTO));
  await store.erase(PACK);
  expect(await store.entriesOf(PACK)).toEqual([]);
  expect(await store.undoLabel(PACK)).toBeNull();
  expect((await store.cards()).map(({ packId }) => packId)).toEqual([OTHER_PACK]);
  expect(await store.photo(SECOND_PHOTO)).toBeNull();
  expect(await store.photo(SECOND_PHOTO, 'thumbs')).toBeNull();
  expect(await store.photo(PHOTO)).toEqual(content);
  expect(await store.photo(ORIGINAL, 'originals')).toEqual(content);
  await store.erase(OTHER_PACK);
  expect(await store.photo(PHOTO)).toBeNull();
  expect(await store.photo(ORIGINAL, 'originals')).toBeNull();
});

it('takes the original of a photo that was deleted more than 50 steps ago', async () => {
  const store = await storeOn(newPhone());
  await written(store, withPhoto(PACK, PHOTO));
  await written(store, change([{ subject: 'photo', part: PHOTO, gone: true }], { undoLabel: 'deleted' }));
  for (let i = 0; i < 51; i += 1) await written(store, change([answer('a', 'weak')], { undoLabel: `${i}` }));
  await store.erase(PACK);
  expect(await store.photo(ORIGINAL, 'originals')).toBeNull();
});

it('counts 2 photos in no backup, 1 after the other went into one; demo packs and deleted photos do not count', async () => {
  const store = await storeOn(newPhone());
  const demoPack = 'd'.repeat(32);
  await written(store, withPhoto(PACK, PHOTO));
  await written(store, withPhoto(PACK, SECOND_PHOTO));
  await written(store, withPhoto(OTHER_PACK, PHOTO));
  await written(store, withPhoto(PACK, '9'.repeat(64)));
  await written(store, change([{ subject: 'photo', part: '9'.repeat(64), gone: true }]));
  await written(store, withPhoto(demoPack, '8'.repeat(64), { card: cardOf(demoPack, true)([]) }));
  expect(await store.photosInNoBackup()).toBe(2);
  await store.noteBackup([PHOTO]);
  expect(await store.photosInNoBackup()).toBe(1);
  await written(store, withPhoto(PACK, PHOTO));
  expect(await store.photosInNoBackup()).toBe(1);
});
