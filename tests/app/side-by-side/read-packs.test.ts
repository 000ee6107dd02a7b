import { expect, it, vi } from 'vitest';
import { closeSheet } from '../../../src/app/closing/close-sheet.ts';
import { readPacks } from '../../../src/app/side-by-side/read-packs.ts';
import type { Put, Store } from '../../../src/storage/store.ts';
import { HUT_CHECKLIST, NEWEST_MS, stampAt } from '../../sheet/hut-pack.ts';
import { cardOf } from '../../storage/open-test-store.ts';
import { HUT, hutSession } from '../closing/hut-session.ts';

vi.mock('../../../src/app/app-version.ts', () => ({ APP_VERSION: '0.4.0' }));

const OFFER: Put = {
  subject: 'offer',
  part: 'e'.repeat(32),
  v: { kind: 'price', price: 500, currency: 'EUR', made: stampAt(NEWEST_MS) },
};
const TIDY_FAILED: Put = {
  subject: 'answer',
  part: 'tidy',
  v: { kind: 'grade', grade: 'failed', evidence: 'seen' },
};
const WEAK_LUG: Put = { subject: 'answer', part: 'main-lug', v: { kind: 'grade', grade: 'weak', evidence: 'seen' } };

/** As another tab or a backup writes: past the session that would ask for a reason. */
async function write(store: Store, ...puts: Put[]): Promise<void> {
  const definition = { sha256: 'c'.repeat(64), text: JSON.stringify(HUT_CHECKLIST) };
  expect(await store.write({ packId: HUT, puts, card: cardOf(HUT)([]), definition })).toMatchObject({ ok: true });
}

/** Closed at a moment of its own, so that each test has a sealed JSON of its own. */
async function closedHut(closedAtMs: number) {
  const { store, session } = await hutSession();
  expect(await closeSheet(session, closedAtMs)).toBeNull();
  return store;
}

const readHut = async () => {
  const { compared, unsealedIds } = await readPacks([HUT]);
  const [pack] = compared;
  return { pack, unsealedIds, lug: pack?.record.answers['main-lug'], score: pack?.grading.score };
};

// 14.5-19.5: tests/sheet/write-pdf.test.ts works both ends out by hand for this pack.
it('compares a closed sheet as it was sealed, at 14.5 to 19.5, whatever came in since; later prices are those of today', async () => {
  const store = await closedHut(Date.UTC(2026, 10, 25, 10));
  await write(store, TIDY_FAILED, WEAK_LUG, OFFER);
  const { pack, unsealedIds, lug, score } = await readHut();
  expect(lug).toMatchObject({ grade: 'failed' });
  expect(score?.low.toFixed(1)).toBe('14.5');
  expect(score?.high.toFixed(1)).toBe('19.5');
  expect(pack?.record.offers).toMatchObject([{ price: 500 }]);
  expect(pack?.record.sheet).toMatchObject({ now: 'closed', revision: 1 });
  expect(pack?.record.closings).toHaveLength(1);
  expect(unsealedIds).toEqual([]);
});

it('compares an open sheet as it stands: the weak lug, 0 sheets not as sealed', async () => {
  const { store } = await hutSession();
  await write(store, WEAK_LUG);
  expect(await readHut()).toMatchObject({ lug: { grade: 'weak' }, unsealedIds: [] });
});

it('tells a closed sheet that is not as sealed, because its JSON is not here, only once it has changed: 0, then 1', async () => {
  const store = await closedHut(Date.UTC(2026, 10, 25, 11));
  vi.spyOn(store, 'sealed').mockResolvedValue(null);
  await write(store, OFFER);
  expect(await readHut()).toMatchObject({ lug: { grade: 'failed' }, unsealedIds: [] });
  await write(store, WEAK_LUG);
  expect(await readHut()).toMatchObject({ lug: { grade: 'weak' }, unsealedIds: [HUT] });
});

it('reads a closed sheet whose checklist is nowhere but in its sealed JSON: 1 pack, 0 unread', async () => {
  await closedHut(Date.UTC(2026, 10, 25, 12));
  expect(await readPacks([HUT])).toMatchObject({ compared: [{ definition: { id: 'hut' } }], unreadIds: [] });
});
