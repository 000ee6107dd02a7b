import * as v from 'valibot';
import { expect, it } from 'vitest';
import { isStorableOffset, offsetByMark } from '../../../src/app/shoot-clock/offset.ts';
import { changedTake, removedTake } from '../../../src/app/shoot-clock/take-puts.ts';
import { provisionalEntries } from '../../../src/app/state/provisional.ts';
import type { RecordTake } from '../../../src/record/pack-record.ts';
import { type Take, takeSchema } from '../../../src/schema/take.ts';
import { inRecordingMs } from '../../../src/sheet/chapters/chapters-of.ts';
import { deepFreeze } from '../../grading/deep-freeze.ts';
import { stampAt } from '../../sheet/hut-pack.ts';

const BEGAN_MS = Date.UTC(2026, 10, 25, 9);
const TAKE: RecordTake = deepFreeze({
  id: 'a'.repeat(32),
  label: 'Lid off',
  startedAtMs: BEGAN_MS,
  made: stampAt(BEGAN_MS),
  marks: [{ id: 'b'.repeat(32), kind: 'word', atMs: BEGAN_MS + 60_000 }],
});
const takeIn = (put: ReturnType<typeof changedTake>) => ('gone' in put ? null : put.v);

it('changes what is named and keeps the rest, members of a newer version too, and stores neither id nor marks', () => {
  const newer = { ...TAKE, camera: 'left' };
  const v1 = takeIn(changedTake(newer, { endedAtMs: BEGAN_MS + 90_000 }));
  expect(v1).toEqual({
    label: 'Lid off',
    startedAtMs: BEGAN_MS,
    endedAtMs: BEGAN_MS + 90_000,
    made: stampAt(BEGAN_MS),
    camera: 'left',
  });
  expect(v.is(takeSchema, v1)).toBe(true);
});

it('an emptied name leaves none: no member label', () => {
  expect(takeIn(changedTake(TAKE, { label: null }))).not.toHaveProperty('label');
  expect(takeIn(changedTake(TAKE, { label: 'Vents' }))).toMatchObject({ label: 'Vents' });
});

it('asks for a stamp of its own while the one of its start is still being drawn: made null', () => {
  const { id, marks, ...value } = TAKE;
  const [entry] = provisionalEntries('p', [], [{ subject: 'take', part: id, v: { ...value, made: null } }]);
  const provisional: RecordTake = { ...(entry?.v as Take), id, marks };
  expect(provisional.made).not.toBeNull();
  expect(takeIn(changedTake(provisional, { offsetMs: 1 }))).toMatchObject({ made: null });
});

it('removes a take and its 1 mark in one list of 2', () => {
  expect(removedTake(TAKE)).toEqual([
    { subject: 'take', part: TAKE.id, gone: true },
    { subject: 'takeMark', part: `${TAKE.id}/${'b'.repeat(32)}`, gone: true },
  ]);
});

it('a mark at 60 s that is at 1:04.5 in the recording makes an offset of 4500 ms, and then lies there', () => {
  const offsetMs = offsetByMark(TAKE, BEGAN_MS + 60_000, 64_500);
  expect(offsetMs).toBe(4500);
  expect(inRecordingMs({ ...TAKE, offsetMs }, BEGAN_MS + 60_000)).toBe(64_500);
});

it('a day either way can be kept, 1 ms more cannot', () => {
  const dayMs = 86_400_000;
  expect([dayMs, -dayMs, 0].map(isStorableOffset)).toEqual([true, true, true]);
  expect([dayMs + 1, -dayMs - 1, 0.5, Number.NaN].map(isStorableOffset)).toEqual([false, false, false, false]);
});
