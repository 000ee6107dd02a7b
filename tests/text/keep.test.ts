import { expect, it } from 'vitest';
import { keepWords } from '../../src/text/keep.ts';

const none = { photos: 0, logs: 0, sheets: 0, voices: 0 };

it.each([
  [{ ...none, voices: 1 }, 'Wren 24: 1 voice note is not in these files; restore the other parts too'],
  [
    { photos: 2, logs: 1, sheets: 1, voices: 3 },
    'Wren 24: 2 photos, 1 log, 1 closed sheet and 3 voice notes are not in these files; restore the other parts too',
  ],
])('says what of a pack is missing, each counted by its own name: %j', (missing, said) => {
  expect(keepWords.packMissing('Wren 24', missing)).toBe(said);
});

it.each([
  [{ photos: 0, logs: 0, voices: 1 }, '1 voice note is in no backup yet.'],
  [{ photos: 1, logs: 0, voices: 2 }, '1 photo and 2 voice notes are in no backup yet.'],
])('says what is in no backup: %j', (standing, said) => {
  expect(keepWords.noBackup(standing)).toBe(said);
});
