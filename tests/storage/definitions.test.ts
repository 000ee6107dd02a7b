import { expect, it } from 'vitest';
import type { Put } from '../../src/storage/store.ts';
import { OTHER_PACK, PACK } from '../record/made-entries.ts';
import { cardOf, change, newPhone, storeOn, written } from './open-test-store.ts';

const [OLD, NEW, LOOSE] = ['a', 'b', 'c'].map((digit) => digit.repeat(64)) as [string, string, string];
const graded = (sha256: string, part = 'checklist'): Put => ({
  subject: 'pack',
  part,
  v: { id: 'own', version: '0.1.0', sha256 },
});
const textOf = (sha256: string) => ({ sha256, text: `{"id":"${sha256[0]}"}` });

async function bench() {
  const store = await storeOn(newPhone());
  for (const sha256 of [OLD, NEW, LOOSE]) await store.keepDefinition(sha256, textOf(sha256).text);
  return store;
}

it('a definition no pack uses goes, the other 2 stay to the byte', async () => {
  const store = await bench();
  await written(store, change([graded(OLD)]));
  await written(store, change([graded(NEW)], { packId: OTHER_PACK, card: cardOf(OTHER_PACK)([]) }));
  expect(await store.removeDefinition(LOOSE)).toEqual({ ok: true });
  expect(await store.definitions()).toEqual([textOf(OLD), textOf(NEW)]);
  expect(await store.definitionText(LOOSE)).toBeNull();
});

it('one that a pack is graded by stays, and so does the one it was carried over from; each pack is named once', async () => {
  const store = await bench();
  const card = { ...cardOf(PACK)([]), name: 'Shed', sample: '2', gone: true };
  await written(store, change([graded(NEW), graded(OLD, 'carriedFrom')], { card }));
  const usedBy = [{ packId: PACK, name: 'Shed', sample: '2' }];
  expect(await store.definitionUses()).toEqual(new Map([OLD, NEW].map((sha256) => [sha256, usedBy])));
  for (const sha256 of [OLD, NEW]) expect(await store.removeDefinition(sha256)).toEqual({ ok: false, usedBy });
  expect(await store.definitions()).toHaveLength(3);
});

it('one that only an undo leads back to stays, until the pack is erased', async () => {
  const store = await bench();
  await written(store, change([graded(OLD)]));
  await written(store, change([graded(NEW)], { undoLabel: 'carried over' }));
  expect(await store.removeDefinition(OLD)).toMatchObject({ ok: false });
  await store.undo(PACK, cardOf(PACK));
  expect(await store.removeDefinition(NEW)).toEqual({ ok: true });
  expect(await store.removeDefinition(OLD)).toMatchObject({ ok: false });
  await store.erase(PACK);
  expect(await store.removeDefinition(OLD)).toEqual({ ok: true });
});

it('a tombstone names none', async () => {
  const store = await bench();
  await written(store, change([graded(OLD, 'carriedFrom')]));
  await written(store, change([{ subject: 'pack', part: 'carriedFrom', gone: true }]));
  expect(await store.removeDefinition(OLD)).toEqual({ ok: true });
});
