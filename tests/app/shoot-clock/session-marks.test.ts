import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { closeSheet } from '../../../src/app/closing/close-sheet.ts';
import type { PackSession } from '../../../src/app/state/pack-session.ts';
import type { Put } from '../../../src/storage/store.ts';
import { HUT, hutSession, openedAgain, tidyIs } from '../closing/hut-session.ts';

vi.mock('../../../src/app/app-version.ts', () => ({ APP_VERSION: '0.4.0' }));

const TAKE = 'a'.repeat(32);
const START_MS = Date.UTC(2026, 10, 25, 9);
/** What the phone's clock says. */
let nowMs = START_MS;

beforeEach(() => {
  nowMs = START_MS;
  vi.spyOn(Date, 'now').mockImplementation(() => nowMs);
});
afterEach(() => vi.restoreAllMocks());

const startTake = (session: PackSession, id = TAKE) =>
  session.put({ puts: [{ subject: 'take', part: id, v: { startedAtMs: nowMs, made: null } }], undoLabel: 'Take' });
const endTake = (session: PackSession) =>
  session.put({
    puts: [{ subject: 'take', part: TAKE, v: { startedAtMs: START_MS, endedAtMs: nowMs, made: null } }],
    undoLabel: 'End',
  });
const marksIn = (session: PackSession) =>
  session.record.value.takes.flatMap(({ marks }) => marks.map(({ id, ...mark }) => mark));

it('writes a grade and its mark at 61 s in one transaction, and takes both back with one undo', async () => {
  const { store, session } = await hutSession();
  await startTake(session);
  nowMs = START_MS + 61_000;
  const write = vi.spyOn(store, 'write');
  expect(await session.put(tidyIs('weak'))).toBe(true);
  expect(write.mock.calls.map(([{ puts }]) => puts.map(({ subject }) => subject))).toEqual([['answer', 'takeMark']]);
  const mark = { kind: 'answer', subject: 'answer', part: 'tidy', atMs: START_MS + 61_000 };
  expect(marksIn(session)).toEqual([mark]);
  expect(marksIn(await openedAgain(store))).toEqual([mark]);
  await session.undo();
  expect(session.record.value.answers.tidy).toMatchObject({ grade: 'sound' });
  expect(marksIn(session)).toEqual([]);
  expect(session.record.value.takes).toHaveLength(1);
});

it('marks the first of two quick grades only, at its own moment, though neither is written yet', async () => {
  const { session } = await hutSession();
  await startTake(session);
  nowMs = START_MS + 5000;
  const first = session.put(tidyIs('weak'));
  nowMs = START_MS + 9000;
  const second = session.put(tidyIs('failed'));
  expect(await Promise.all([first, second])).toEqual([true, true]);
  expect(marksIn(session)).toMatchObject([{ atMs: START_MS + 5000 }]);
  await session.undo();
  expect(marksIn(session)).toMatchObject([{ atMs: START_MS + 5000 }]);
  await session.undo();
  expect(marksIn(session)).toEqual([]);
});

it('without a running take a change is written as it was given: 1 put, no mark', async () => {
  const { store, session } = await hutSession();
  const write = vi.spyOn(store, 'write');
  await session.put(tidyIs('weak'));
  await startTake(session);
  await endTake(session);
  await session.put(tidyIs('failed'));
  expect(write.mock.calls.map(([{ puts }]) => puts.length)).toEqual([1, 1, 1, 1]);
  expect(marksIn(session)).toEqual([]);
});

it('takes and the tester’s own marks leave a closed sheet closed and ask for no reason', async () => {
  const { session } = await hutSession();
  expect(await closeSheet(session, START_MS)).toBeNull();
  expect(await startTake(session)).toBe(true);
  const own: Put = {
    subject: 'takeMark',
    part: `${TAKE}/${'b'.repeat(32)}`,
    v: { kind: 'word', label: 'Lid', atMs: nowMs },
  };
  expect(await session.put({ puts: [own], undoLabel: 'Lid' })).toBe(true);
  expect(session.heldBack.value).toEqual([]);
  expect(session.record.value.sheet.now).toBe('closed');
  expect(marksIn(session)).toEqual([{ kind: 'word', label: 'Lid', atMs: START_MS }]);
});

it('Undo of a take is no change of a closed sheet; of the answer under it, it asks for the reason', async () => {
  const { session } = await hutSession();
  await session.put(tidyIs('weak'));
  expect(await closeSheet(session, START_MS)).toBeNull();
  await startTake(session);
  await session.undo();
  expect(session.record.value.takes).toEqual([]);
  expect(session.heldBack.value).toEqual([]);
  expect(session.record.value.sheet.now).toBe('closed');
  const held = session.undo();
  await vi.waitFor(() => expect(session.heldBack.value).toEqual(['undo']));
  await session.decide(null);
  await held;
  expect(session.record.value.answers.tidy).toMatchObject({ grade: 'weak' });
});

it('a change held back by a closed sheet keeps its moment, 20 s, though the reason is given at 90 s', async () => {
  const { store, session } = await hutSession();
  expect(await closeSheet(session, START_MS)).toBeNull();
  await startTake(session);
  nowMs = START_MS + 20_000;
  const done = session.put(tidyIs('failed'));
  expect((await store.entriesOf(HUT)).filter(({ key }) => key[1] === 'takeMark')).toEqual([]);
  nowMs = START_MS + 90_000;
  const write = vi.spyOn(store, 'write');
  await session.decide('The clamp came loose.');
  expect(await done).toBe(true);
  expect(write.mock.calls.map(([{ puts }]) => puts.map(({ subject }) => subject))).toEqual([
    ['reopening', 'answer', 'takeMark'],
  ]);
  expect(marksIn(session)).toMatchObject([{ atMs: START_MS + 20_000 }]);
});

it('dropped, the mark goes with the change; held back before the take began, it is in no take', async () => {
  const { session } = await hutSession();
  expect(await closeSheet(session, START_MS)).toBeNull();
  await startTake(session);
  const dropped = session.put(tidyIs('failed'));
  await session.decide(null);
  expect(await dropped).toBe(false);
  expect(marksIn(session)).toEqual([]);
  await endTake(session);
  const before = session.put(tidyIs('weak'));
  await startTake(session, 'c'.repeat(32));
  nowMs = START_MS + 1000;
  await session.decide('Looked again.');
  expect(await before).toBe(true);
  expect(marksIn(session)).toEqual([]);
});

it('a grade that the records refused is mended by the next one, and the mark of 7 s is kept', async () => {
  const { session } = await hutSession();
  await startTake(session);
  nowMs = START_MS + 7000;
  const bad = {
    puts: [{ subject: 'answer', part: 'tidy', v: { kind: 'grade', grade: 'splendid', evidence: 'seen' } }],
  };
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  expect(await session.put(bad)).toBe(false);
  expect(session.saving.value).toEqual({ now: 'notSaved', problem: 'refused' });
  nowMs = START_MS + 8000;
  expect(await session.put(tidyIs('weak'))).toBe(true);
  expect(session.saving.value).toEqual({ now: 'saved' });
  expect(session.unsaved).toEqual([]);
  expect(marksIn(session)).toMatchObject([{ atMs: START_MS + 7000 }]);
});
