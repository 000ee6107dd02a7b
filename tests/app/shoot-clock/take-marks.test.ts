import { describe, expect, it } from 'vitest';
import {
  FORGOTTEN_MS,
  isForgotten,
  openTake,
  takeMarkPuts,
  unwrittenMarks,
} from '../../../src/app/shoot-clock/take-marks.ts';
import type { RecordTake } from '../../../src/record/pack-record.ts';
import { LIVE_TEST_SUBJECTS } from '../../../src/schema/live-tests/live-tests.ts';
import type { TakeMark } from '../../../src/schema/take.ts';
import type { Put } from '../../../src/storage/store.ts';
import { deepFreeze } from '../../grading/deep-freeze.ts';

const TAKE = 'a'.repeat(32);
const START_MS = Date.UTC(2026, 10, 25, 9);
const NOW_MS = START_MS + 65_000;

const take = (given: Partial<RecordTake> = {}): RecordTake => ({
  id: TAKE,
  startedAtMs: START_MS,
  made: `000000000000001.000000.${'0'.repeat(32)}`,
  marks: [],
  ...given,
});
const graded: Put = { subject: 'answer', part: 'tidy', v: { kind: 'grade', grade: 'weak', evidence: 'seen' } };
const marksOf = (takes: RecordTake[], puts: Put[], nowMs = NOW_MS) =>
  takeMarkPuts(deepFreeze({ takes }), deepFreeze(puts), nowMs);
const valuesOf = (puts: Put[]) => puts.map((put) => ('gone' in put ? null : put.v));

describe('takeMarkPuts', () => {
  it('marks a grade, readings, a photo and a trip: 4 marks under the take’s id, each at 65 s', () => {
    const puts: Put[] = [
      graded,
      { subject: 'answer', part: 'gap', v: { kind: 'readings', values: { gap: 4 }, evidence: 'measured' } },
      { subject: 'photo', part: 'b'.repeat(64), v: { zone: 'wiring' } },
      { subject: 'trip', part: 'c'.repeat(32), v: { currentA: 150 } },
    ];
    const marks = marksOf([take()], puts);
    expect(valuesOf(marks)).toEqual([
      { kind: 'answer', subject: 'answer', part: 'tidy', atMs: NOW_MS },
      { kind: 'answer', subject: 'answer', part: 'gap', atMs: NOW_MS },
      { kind: 'photo', subject: 'photo', part: 'b'.repeat(64), atMs: NOW_MS },
      { kind: 'test', subject: 'trip', part: 'c'.repeat(32), atMs: NOW_MS },
    ]);
    expect(new Set(marks.map(({ part }) => part)).size).toBe(4);
    for (const { subject, part } of marks) {
      expect(subject).toBe('takeMark');
      expect(part).toMatch(new RegExp(`^${TAKE}/[0-9a-f]{32}$`));
    }
  });

  it('marks 12 of the 17 subjects of live tests: all but instrument, log, sensorGate, cell and parallelShare', () => {
    const puts = Object.keys(LIVE_TEST_SUBJECTS).map((subject): Put => ({ subject, part: 'd'.repeat(32), v: {} }));
    expect(puts).toHaveLength(17);
    const marked = valuesOf(marksOf([take()], puts)).map((mark) => (mark as { subject: string }).subject);
    const unmarked = Object.keys(LIVE_TEST_SUBJECTS).filter((subject) => !marked.includes(subject));
    expect(unmarked).toEqual(['instrument', 'log', 'sensorGate', 'cell', 'parallelShare']);
  });

  it.each<[string, Put]>([
    ['an answer of not seen', { subject: 'answer', part: 'tidy', v: { kind: 'notSeen', reason: 'dark' } }],
    [
      'a grade given for the rest of a zone',
      { subject: 'answer', part: 'tidy', v: { kind: 'grade', grade: 'sound', evidence: 'seen', unlooked: true } },
    ],
    ['a bare note', { subject: 'answer', part: 'tidy', v: { kind: 'open', note: 'later' } }],
    ['an answer taken away', { subject: 'answer', part: 'tidy', gone: true }],
    ['a photo taken away', { subject: 'photo', part: 'b'.repeat(64), gone: true }],
    ['a nameplate field', { subject: 'nameplate', part: 'maker', v: 'Wren' }],
    ['a fact', { subject: 'fact', part: 'metal-case', v: { choice: 'yes' } }],
    ['a mark', { subject: 'takeMark', part: `${TAKE}/${'e'.repeat(32)}`, v: { kind: 'word', atMs: NOW_MS } }],
  ])('marks nothing for %s', (_, put) => {
    expect(marksOf([take()], [put])).toEqual([]);
  });

  it('marks nothing without a take, after its end, or 12 h and 1 ms after its start; at 12 h it still does', () => {
    expect(marksOf([], [graded])).toEqual([]);
    expect(marksOf([take({ endedAtMs: NOW_MS })], [graded])).toEqual([]);
    expect(marksOf([take()], [graded], START_MS + FORGOTTEN_MS)).toHaveLength(1);
    expect(marksOf([take()], [graded], START_MS + FORGOTTEN_MS + 1)).toEqual([]);
    expect(FORGOTTEN_MS).toBe(43_200_000);
  });

  it('marks an entry once in a take: none for the second grade of the same item, 1 in the next take', () => {
    const mark: TakeMark = { kind: 'answer', subject: 'answer', part: 'tidy', atMs: NOW_MS - 1 };
    const first = take({ marks: [{ ...mark, id: 'f'.repeat(32) }] });
    expect(marksOf([first], [graded])).toEqual([]);
    expect(marksOf([{ ...first, endedAtMs: NOW_MS }, take({ id: 'b'.repeat(32) })], [graded])).toHaveLength(1);
    expect(marksOf([take()], [graded, graded])).toHaveLength(1);
  });

  it('puts a mark at the start of the take where the clock was set back by an hour since', () => {
    expect(valuesOf(marksOf([take()], [graded], START_MS - 3_600_000))).toMatchObject([{ atMs: START_MS }]);
  });
});

it('the take begun last is the one that runs where two were left open; forgotten only past 12 h', () => {
  const takes = [take(), take({ id: 'b'.repeat(32) }), take({ id: 'c'.repeat(32), endedAtMs: NOW_MS })];
  expect(openTake({ takes })?.id).toBe('b'.repeat(32));
  expect(openTake({ takes: takes.slice(2) })).toBeNull();
  expect(isForgotten(take(), START_MS + FORGOTTEN_MS)).toBe(false);
  expect(isForgotten(take(), START_MS + FORGOTTEN_MS + 1)).toBe(true);
});

it('gives the 1 unwritten mark of the same entry along, and none of another or of the tester’s own', () => {
  const mark = (id: string, v: TakeMark): Put => ({ subject: 'takeMark', part: `${TAKE}/${id.repeat(32)}`, v });
  const tidy = mark('1', { kind: 'answer', subject: 'answer', part: 'tidy', atMs: NOW_MS });
  const other = mark('2', { kind: 'answer', subject: 'answer', part: 'case-lid', atMs: NOW_MS });
  const own = mark('3', { kind: 'word', label: 'x', atMs: NOW_MS });
  expect(unwrittenMarks([graded, tidy, other, own, tidy], [graded])).toEqual([tidy]);
});
