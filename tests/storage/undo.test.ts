import { expect, it } from 'vitest';
import { OTHER_PACK, PACK, PHOTO, photoValue } from '../record/made-entries.ts';
import { answer, bytesOf, cardOf, change, newPhone, storeOn, written } from './open-test-store.ts';

const gradeOf = (v: unknown) => (v as { grade?: string } | null)?.grade ?? null;

it('takes back three steps one by one: passable → weak → sound → a tombstone, each with a newer stamp', async () => {
  const store = await storeOn(newPhone());
  for (const grade of ['sound', 'weak', 'passable']) {
    await written(store, change([answer('a', grade)], { undoLabel: `a: ${grade}` }));
  }
  const seen: unknown[] = [];
  let last = (await store.entriesOf(PACK))[0]?.at ?? '';
  for (let step = 0; step < 3; step += 1) {
    seen.push(await store.undoLabel(PACK));
    const result = await store.undo(PACK, cardOf(PACK));
    expect(result).toMatchObject({ ok: true });
    const [entry] = await store.entriesOf(PACK);
    expect(result.ok && result.entries).toEqual([entry]);
    expect((entry?.at ?? '') > last).toBe(true);
    last = entry?.at ?? '';
    seen.push(entry?.gone ? 'gone' : gradeOf(entry?.v));
  }
  expect(seen).toEqual(['a: passable', 'weak', 'a: weak', 'sound', 'a: sound', 'gone']);
  expect(await store.undoLabel(PACK)).toBeNull();
  expect(await store.undo(PACK, cardOf(PACK))).toMatchObject({ ok: false, problem: 'failed' });
});

it('computes the card from the entries after the step was taken back: 1 answer left of 2', async () => {
  const store = await storeOn(newPhone());
  await written(store, change([answer('a', 'weak')], { undoLabel: 'a' }));
  await written(store, change([answer('b', 'weak')], { undoLabel: 'b' }));
  await store.undo(PACK, cardOf(PACK));
  expect((await store.cards())[0]?.settledCount).toBe(1);
});

it('keeps 50 steps of each pack and lets the oldest go', async () => {
  const store = await storeOn(newPhone());
  await written(store, change([answer('a', 'weak')], { packId: OTHER_PACK, undoLabel: 'other pack' }));
  for (let i = 0; i < 53; i += 1) await written(store, change([answer(`a${i}`, 'weak')], { undoLabel: `step ${i}` }));
  const labels: (string | null)[] = [];
  for (let label = await store.undoLabel(PACK); label !== null; label = await store.undoLabel(PACK)) {
    labels.push(label);
    await store.undo(PACK, cardOf(PACK));
  }
  expect(labels).toEqual(Array.from({ length: 50 }, (_, i) => `step ${52 - i}`));
  expect(await store.undoLabel(OTHER_PACK)).toBe('other pack');
});

it('has no step for a change without a label', async () => {
  const store = await storeOn(newPhone());
  await written(store, change([answer('a', 'weak')]));
  expect(await store.undoLabel(PACK)).toBeNull();
});

it('leaves a value alone that something else has changed since, and takes the rest of the step back', async () => {
  const store = await storeOn(newPhone());
  await written(store, change([answer('a', 'weak'), answer('b', 'weak')], { undoLabel: 'both' }));
  await written(store, change([answer('a', 'failed')]));
  const result = await store.undo(PACK, cardOf(PACK));
  expect(result.ok && result.entries.map(({ key }) => key[2])).toEqual(['b']);
  expect((await store.entriesOf(PACK)).map(({ v }) => gradeOf(v))).toEqual(['failed', null]);
});

it('brings a deleted photo back: its bytes stay until the pack is erased', async () => {
  const store = await storeOn(newPhone());
  const content = { type: 'image/jpeg', bytes: bytesOf(500) };
  await written(
    store,
    change([{ subject: 'photo', part: PHOTO, v: photoValue() }], {
      photos: [{ sha256: PHOTO, shelf: 'photos', content }],
      undoLabel: 'photo',
    }),
  );
  await written(store, change([{ subject: 'photo', part: PHOTO, gone: true }], { undoLabel: 'photo deleted' }));
  expect(await store.photo(PHOTO)).toEqual(content);
  await store.undo(PACK, cardOf(PACK));
  expect((await store.entriesOf(PACK))[0]).toMatchObject({ v: photoValue() });
  await store.erase(PACK);
  expect(await store.photo(PHOTO)).toBeNull();
});

it('writes nothing when the card cannot be computed', async () => {
  const store = await storeOn(newPhone());
  await written(store, change([answer('a', 'weak')], { undoLabel: 'a' }));
  const before = await store.entriesOf(PACK);
  const result = await store.undo(PACK, () => {
    throw new Error('no definition');
  });
  expect(result).toMatchObject({ ok: false, problem: 'failed', detail: expect.stringContaining('no definition') });
  expect(await store.entriesOf(PACK)).toEqual(before);
  expect(await store.undoLabel(PACK)).toBe('a');
});

it('takes back no more what a change has ended the undo of: of 3 steps the 1 that touched none of it stays', async () => {
  const store = await storeOn(newPhone());
  await written(store, change([answer('a', 'weak')], { undoLabel: 'a' }));
  await written(store, change([answer('b-1', 'weak')], { undoLabel: 'b 1' }));
  await written(store, change([answer('b-2', 'weak'), answer('c', 'weak')], { undoLabel: 'b 2 and c' }));
  await written(store, change([answer('d', 'sound')], { endsUndoOf: [{ subject: 'answer', partBegins: 'b-' }] }));
  expect(await store.undoLabel(PACK)).toBe('a');
  await store.undo(PACK, cardOf(PACK));
  expect(await store.undoLabel(PACK)).toBeNull();
  const grades = new Map((await store.entriesOf(PACK)).map(({ key, v }) => [key[2], gradeOf(v)]));
  expect(Object.fromEntries(grades)).toMatchObject({ a: null, 'b-1': 'weak', 'b-2': 'weak', c: 'weak', d: 'sound' });
});
