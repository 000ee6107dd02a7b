import { createHash } from 'node:crypto';
import { expect, it, vi } from 'vitest';
import { closeSheet } from '../../../src/app/closing/close-sheet.ts';
import { comeInSince } from '../../../src/app/closing/come-in.ts';
import { readSealedSheet } from '../../../src/app/closing/sealed-content.ts';
import { reopeningPuts } from '../../../src/app/state/closed-guard.ts';
import type { PackSession } from '../../../src/app/state/pack-session.ts';
import type { Entry } from '../../../src/schema/entry.ts';
import type { SealedSheet } from '../../../src/schema/sealed-sheet.ts';
import { HUT_SEAL } from '../../sheet/sealed/hut-seal.ts';
import { cardOf, newPhone } from '../../storage/open-test-store.ts';
import { HUT, hutSession, openedAgain, tidyIs } from './hut-session.ts';

vi.mock('../../../src/app/app-version.ts', () => ({ APP_VERSION: '0.4.0' }));

const CLOSED_MS = Date.UTC(2026, 10, 25, 9);
const gradeOf = (session: PackSession) => {
  const answer = session.record.value.answers.tidy;
  return answer?.kind === 'grade' ? answer.grade : null;
};

async function closedHut() {
  const hut = await hutSession();
  expect(await closeSheet(hut.session, CLOSED_MS)).toBeNull();
  return hut;
}

/** Changes, gives the reason, waits until it is written. */
async function revise(session: PackSession, change: ReturnType<typeof tidyIs>, reason: string) {
  const done = session.put(change);
  await session.decide(reason);
  expect(await done).toBe(true);
}

it('closes as revision 1: the stored JSON has the SHA-256 that names the closing, by node:crypto, and 14.5–19.5', async () => {
  const { store, session } = await closedHut();
  const [closing] = session.record.value.closings;
  expect(session.record.value.sheet).toEqual({ now: 'closed', sha256: closing?.sha256, revision: 1 });
  const bytes = Buffer.from((await store.sealed(closing?.sha256 ?? ''))?.bytes ?? new ArrayBuffer(0));
  expect(createHash('sha256').update(bytes).digest('hex')).toBe(closing?.sha256);
  expect(bytes.byteLength).toBe(closing?.byteCount);
  const sealed = JSON.parse(bytes.toString()) as SealedSheet;
  // The same two ends as tests/sheet/write-pdf.test.ts works out by hand for this pack.
  expect(Math.round((closing?.score?.low ?? 0) * 10) / 10).toBe(14.5);
  expect(Math.round((closing?.score?.high ?? 0) * 10) / 10).toBe(19.5);
  expect(sealed.figures['grading/score/low']).toBe(closing?.score?.low);
  expect(sealed).toMatchObject({ revision: 1, closedAtMs: CLOSED_MS, appVersion: '0.4.0' });
  expect((await store.cards()).find(({ packId }) => packId === HUT)?.closed).toBe(1);
});

it('holds a change of a closed sheet back, writes nothing, and shows the old grade again when it is dropped', async () => {
  const { store, session } = await closedHut();
  const before = await store.entriesOf(HUT);
  const done = session.put(tidyIs('failed'));
  expect(gradeOf(session)).toBe('failed');
  expect(session.heldBack.value).toHaveLength(1);
  expect(session.unsaved).toHaveLength(1);
  await session.flush();
  expect(session.saving.value.now).toBe('saving');
  expect(await store.entriesOf(HUT)).toEqual(before);
  await session.decide(null);
  expect(await done).toBe(false);
  expect(gradeOf(session)).toBe('sound');
  expect(session.saving.value.now).toBe('saved');
  expect(session.unsaved).toHaveLength(0);
  expect(await store.entriesOf(HUT)).toEqual(before);
  expect(session.record.value.sheet.now).toBe('closed');
});

it('writes the reason and the change in one transaction, then asks no more until revision 2 is closed', async () => {
  const { store, session } = await closedHut();
  const write = vi.spyOn(store, 'write');
  await revise(session, tidyIs('failed'), 'The clamp came loose.');
  expect(write.mock.calls.map(([{ puts }]) => puts.map(({ subject }) => subject))).toEqual([['reopening', 'answer']]);
  expect(session.record.value.sheet).toMatchObject({ now: 'revising', revision: 1, reason: 'The clamp came loose.' });
  expect((await store.cards())[0]?.closed).toBeUndefined();
  expect(await session.put(tidyIs('weak'))).toBe(true);

  expect(await closeSheet(session, CLOSED_MS + 60_000)).toBeNull();
  const { closings, sheet } = session.record.value;
  expect(closings.map(({ revision, reason, after }) => ({ revision, reason, after }))).toEqual([
    { revision: 1, reason: undefined, after: undefined },
    { revision: 2, reason: 'The clamp came loose.', after: closings[0]?.sha256 },
  ]);
  expect(sheet).toEqual({ now: 'closed', sha256: closings[1]?.sha256, revision: 2 });
  const first = await readSealedSheet(closings[0]?.sha256 ?? '');
  expect(first).toMatchObject({ state: 'here', otherLines: 0 });
  expect(first.state === 'here' && first.content.record.answers.tidy).toMatchObject({ grade: 'sound' });
});

it('keeps the bytes of 2 photos held back, and writes both with one reopening', async () => {
  const { store, session } = await closedHut();
  const photo = (digit: string) => ({
    puts: [
      {
        subject: 'photo',
        part: digit.repeat(64),
        v: { zone: 'wiring', widthPx: 8, heightPx: 8, byteCount: 3, originalSha256: '0'.repeat(64), made: null },
      },
    ],
    photos: [
      {
        sha256: digit.repeat(64),
        shelf: 'photos' as const,
        content: { type: 'image/jpeg', bytes: new Uint8Array([1, 2, 3]).buffer },
      },
    ],
  });
  const both = [session.put(photo('1')), session.put(photo('2'))];
  expect(session.unsaved.flatMap(({ photos }) => photos ?? [])).toHaveLength(2);
  expect(await store.photo('1'.repeat(64))).toBeNull();
  await session.decide('Seen on the film.');
  expect(await Promise.all(both)).toEqual([true, true]);
  expect((await store.photo('1'.repeat(64)))?.bytes.byteLength).toBe(3);
  expect((await store.photo('2'.repeat(64)))?.bytes.byteLength).toBe(3);
  expect(session.record.value.reopenings).toHaveLength(1);
});

it('holds Undo back too: dropped, the grade stays; with a reason it is taken back and the sheet is open, in one stroke', async () => {
  const { store, session } = await hutSession();
  await session.put(tidyIs('weak'));
  await closeSheet(session, CLOSED_MS);
  const dropped = session.undo();
  await vi.waitFor(() => expect(session.heldBack.value).toEqual(['undo']));
  await session.decide(null);
  await dropped;
  expect(gradeOf(session)).toBe('weak');

  const undo = vi.spyOn(store, 'undo');
  const taken = session.undo();
  await vi.waitFor(() => expect(session.heldBack.value).toEqual(['undo']));
  await session.decide('A slip of the thumb.');
  await taken;
  expect(gradeOf(session)).toBe('sound');
  expect(undo).toHaveBeenCalledTimes(1);
  expect(session.record.value.sheet).toMatchObject({ now: 'revising', reason: 'A slip of the thumb.' });
});

it('lets a reply, putting the pack away and bringing it back pass while closed, and none of the 3 counts as a change', async () => {
  const { session } = await closedHut();
  const { sheet } = session.record.value;
  const to = sheet.now === 'closed' ? sheet.sha256 : '';
  const v = { kind: 'makerReply', text: 'We changed the lug.', to, made: null };
  expect(await session.putNowOrNever({ puts: [{ subject: 'attachment', part: '1'.repeat(32), v }] })).toBeNull();
  expect(await session.put({ puts: [{ subject: 'pack', part: 'made', gone: true }] })).toBe(true);
  expect(await session.put({ puts: [{ subject: 'pack', part: 'made', v: { demo: true } }] })).toBe(true);
  expect(session.record.value.sheet.now).toBe('closed');
  expect(session.record.value.attachments).toHaveLength(1);
  expect(await comeInSince(session)).toBeNull();
});

it('counts 1 entry that came in past the session, not that the pack was away, nor one changed and taken back again', async () => {
  const { store, session } = await closedHut();
  await session.put({ puts: [{ subject: 'pack', part: 'made', gone: true }] });
  await store.write({ packId: HUT, ...tidyIs('failed'), card: cardOf(HUT)([]) });
  await session.reload();
  expect(await comeInSince(session)).toEqual({ count: 1 });
  await store.undo(HUT, cardOf(HUT));
  await session.reload();
  expect(gradeOf(session)).toBe('sound');
  expect(await comeInSince(session)).toBeNull();
});

it('cannot count without the sealed JSON, and says that something came in', async () => {
  const { store, session } = await closedHut();
  await store.write({ packId: HUT, ...tidyIs('failed'), card: cardOf(HUT)([]) });
  vi.spyOn(store, 'sealed').mockResolvedValue(null);
  await session.reload();
  // Another closing of the same moment would be remembered by its SHA-256: this phone has never read it.
  expect(await comeInSince(session)).toEqual({ count: null });
});

it('makes a revision of what came in: opened with a reason, closed as revision 2', async () => {
  const { store, session } = await closedHut();
  await store.write({ packId: HUT, ...tidyIs('failed'), card: cardOf(HUT)([]) });
  await session.reload();
  const puts = reopeningPuts(session.record.value, 'From the other phone.', CLOSED_MS + 1);
  expect(await session.put({ puts })).toBe(true);
  expect(await closeSheet(session, CLOSED_MS + 2)).toBeNull();
  expect(session.record.value.closings.at(-1)).toMatchObject({ revision: 2, reason: 'From the other phone.' });
  expect(await comeInSince(session)).toBeNull();
});

it('a closing that cannot be written closes nothing, neither on the screen nor after a reload, and waits for nothing', async () => {
  const { store, session } = await hutSession();
  const before = await store.entriesOf(HUT);
  const write = vi.spyOn(store, 'write').mockResolvedValue({ ok: false, problem: 'quotaFull', detail: 'forced' });
  expect(await closeSheet(session, CLOSED_MS)).toBe('quotaFull');
  write.mockRestore();
  expect(session.record.value.sheet).toEqual({ now: 'open' });
  expect(session.record.value.closings).toEqual([]);
  expect(session.saving.value.now).toBe('saved');
  expect(session.unsaved).toHaveLength(0);
  expect(await store.entriesOf(HUT)).toEqual(before);
  expect((await openedAgain(store)).record.value.sheet).toEqual({ now: 'open' });
  expect(await closeSheet(session, CLOSED_MS)).toBeNull();
});

it('asks again for a change that comes after a dropped one', async () => {
  const { session } = await closedHut();
  const first = session.put(tidyIs('failed'));
  await session.decide(null);
  await first;
  const second = session.put(tidyIs('weak'));
  expect(session.heldBack.value).toHaveLength(1);
  await session.decide('Looked again.');
  expect(await second).toBe(true);
  expect(gradeOf(session)).toBe('weak');
});

it('a change held back is written by the second tab’s reason where that tab has opened the sheet meanwhile', async () => {
  const { store, session } = await closedHut();
  const done = session.put(tidyIs('failed'));
  const puts = reopeningPuts(session.record.value, 'Opened elsewhere.', CLOSED_MS + 1);
  await store.write({ packId: HUT, puts, card: cardOf(HUT)([]) });
  await session.reload();
  expect(gradeOf(session)).toBe('failed');
  await session.decide('Mine.');
  expect(await done).toBe(true);
  expect(session.record.value.reopenings.map(({ reason }) => reason)).toEqual(['Opened elsewhere.']);
});

it('tells of a change that arrives while the JSON is being sealed, as of a photo that was still read: 1 in no revision', async () => {
  const { session } = await hutSession();
  const { digest } = crypto.subtle;
  vi.spyOn(crypto.subtle, 'digest').mockImplementationOnce(async (...given) => {
    expect(await session.put(tidyIs('failed'))).toBe(true);
    return digest.apply(crypto.subtle, given);
  });
  expect(await closeSheet(session, CLOSED_MS)).toBeNull();
  expect(gradeOf(session)).toBe('failed');
  expect(session.record.value.sheet.now).toBe('closed');
  expect(await comeInSince(session)).toEqual({ count: 1 });
});

it('closes nothing whose JSON no phone would recheck: a record of 10 001 entries', async () => {
  const { store } = await hutSession();
  const { at, by } = HUT_SEAL.entries[0] as Entry;
  const many = Array.from(
    { length: 10_001 },
    (_, place): Entry => ({ key: [HUT, 'later', `p${place}`], v: 1, at, by }),
  );
  const session = await openedAgain(store, many);
  await expect(closeSheet(session, CLOSED_MS)).rejects.toThrow(RangeError);
  expect(session.record.value.sheet).toEqual({ now: 'open' });
  expect((await store.entriesOf(HUT)).filter(({ key }) => key[1] === 'closing')).toEqual([]);
});

it('dates revision 2, and what opened it, no earlier than revision 1, though the clock is 40 days slower by then', async () => {
  const phone = newPhone();
  phone.clock.nowMs = CLOSED_MS;
  const { session } = await hutSession(phone);
  expect(await closeSheet(session, CLOSED_MS)).toBeNull();
  const slowMs = CLOSED_MS - 40 * 86_400_000;
  phone.clock.nowMs = slowMs;
  vi.spyOn(Date, 'now').mockReturnValue(slowMs);
  await revise(session, tidyIs('failed'), 'By a slow clock.');
  vi.mocked(Date.now).mockRestore();
  expect(session.record.value.reopenings.map(({ openedAtMs }) => openedAtMs)).toEqual([CLOSED_MS]);
  expect(await closeSheet(session, slowMs)).toBeNull();
  expect(session.record.value.closings.map(({ closedAtMs }) => closedAtMs)).toEqual([CLOSED_MS, CLOSED_MS]);
});
