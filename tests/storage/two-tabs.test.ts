import { expect, it, vi } from 'vitest';
import { mergeEntries } from '../../src/record/merge-entries.ts';
import { otherTabsOver } from '../../src/storage/other-tabs.ts';
import { PACK } from '../record/made-entries.ts';
import { answer, cardOf, change, newPhone, type Phone, storeOn, written } from './open-test-store.ts';

let channels = 0;

/** Two tabs of one browser: one database, one channel. */
async function twoTabs(phone: Phone = newPhone()) {
  channels += 1;
  const name = `two-tabs-${channels}`;
  return Promise.all([0, 1].map(() => storeOn(phone, { otherTabs: otherTabsOver(name) })));
}

const grades = async (store: Awaited<ReturnType<typeof storeOn>>) =>
  Object.fromEntries(
    (await store.entriesOf(PACK)).map(({ key, v, gone }) => [key[2], gone ? null : (v as { grade: string }).grade]),
  );

it('keeps 30 answers to 30 items given in turn and at once in two tabs, and both read the same', async () => {
  const [left, right] = await twoTabs();
  if (!left || !right) throw new Error('two tabs');
  for (let i = 0; i < 10; i += 1) await written(i % 2 === 0 ? left : right, change([answer(`turn-${i}`, 'weak')]));
  await Promise.all(
    Array.from({ length: 20 }, (_, i) => written(i % 2 === 0 ? left : right, change([answer(`once-${i}`, 'sound')]))),
  );
  expect(Object.keys(await grades(left))).toHaveLength(30);
  expect(await left.entriesOf(PACK)).toEqual(await right.entriesOf(PACK));
  left.close();
  right.close();
});

it('answered at the same moment in both tabs, one item ends with the write of the greater stamp, as a merge says', async () => {
  const [left, right] = await twoTabs();
  if (!left || !right) throw new Error('two tabs');
  for (let round = 0; round < 20; round += 1) {
    const [one, other] = await Promise.all([
      written(left, change([answer('a', 'weak')])),
      written(right, change([answer('a', 'sound')])),
    ]);
    expect(await left.entriesOf(PACK)).toEqual(mergeEntries(one ?? [], other ?? []));
  }
  left.close();
  right.close();
});

it('tells the other tab of an answer, an undo and an erasure: 3 calls, and none in the tab itself', async () => {
  const [left, right] = await twoTabs();
  if (!left || !right) throw new Error('two tabs');
  const heard: string[] = [];
  const own: string[] = [];
  right.onOtherTab((packId) => heard.push(packId));
  left.onOtherTab((packId) => own.push(packId));
  await written(left, change([answer('a', 'weak')], { undoLabel: 'a' }));
  await left.undo(PACK, cardOf(PACK));
  await left.erase(PACK);
  await vi.waitFor(() => expect(heard).toEqual([PACK, PACK, PACK]));
  expect(own).toEqual([]);
  left.close();
  right.close();
});

it('takes back its own last step in one tab, though the other has answered since: that answer stays', async () => {
  const [left, right] = await twoTabs();
  if (!left || !right) throw new Error('two tabs');
  await written(left, change([answer('a', 'weak')], { undoLabel: 'a: weak' }));
  await written(right, change([answer('b', 'failed')], { undoLabel: 'b: failed' }));
  expect([await left.undoLabel(PACK), await right.undoLabel(PACK)]).toEqual(['a: weak', 'b: failed']);
  expect(await left.undo(PACK, cardOf(PACK))).toMatchObject({ ok: true });
  expect(await grades(right)).toEqual({ a: null, b: 'failed' });
  expect(await left.undoLabel(PACK)).toBeNull();
  expect(await left.undo(PACK, cardOf(PACK))).toMatchObject({ ok: false, problem: 'failed' });
  expect(await right.undo(PACK, cardOf(PACK))).toMatchObject({ ok: true });
  expect(await grades(left)).toEqual({ a: null, b: null });
  left.close();
  right.close();
});

it('leaves the other tab’s later answer to the same item alone when its own is taken back', async () => {
  const [left, right] = await twoTabs();
  if (!left || !right) throw new Error('two tabs');
  await written(left, change([answer('a', 'weak')], { undoLabel: 'a: weak' }));
  await written(right, change([answer('a', 'failed')], { undoLabel: 'a: failed' }));
  await left.undo(PACK, cardOf(PACK));
  expect(await grades(right)).toEqual({ a: 'failed' });
  await right.undo(PACK, cardOf(PACK));
  expect(await grades(left)).toEqual({ a: 'weak' });
  left.close();
  right.close();
});

it('takes back in a tab opened later what was done before it was opened, and only once', async () => {
  const phone = newPhone();
  const first = await storeOn(phone);
  await written(first, change([answer('a', 'weak')], { undoLabel: 'a: weak' }));
  const later = await storeOn(phone);
  expect(await later.undoLabel(PACK)).toBe('a: weak');
  await later.undo(PACK, cardOf(PACK));
  expect(await first.undoLabel(PACK)).toBeNull();
  expect(await grades(first)).toEqual({ a: null });
});
