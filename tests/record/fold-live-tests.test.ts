import { describe, expect, it } from 'vitest';
import { foldRecord } from '../../src/record/fold-record.ts';
import type { Entry } from '../../src/schema/entry.ts';
import { LIVE_TEST_SUBJECTS, type LiveTestSubject, type LiveTests } from '../../src/schema/live-tests/live-tests.ts';
import { FULL_VALUES } from '../schema/live-tests/full-values.ts';
import { entry, OTHER_PACK, PACK, stampAt, tombstone } from './made-entries.ts';

const [A, B, C] = ['a', 'b', 'c'].map((digit) => digit.repeat(32)) as [string, string, string];
const DIGEST_A = 'a'.repeat(64);
const DIGEST_B = 'b'.repeat(64);

/** Where each subject lands. By hand. A member lands in its set. */
const PLACES: Readonly<Record<Exclude<LiveTestSubject, 'cell' | 'parallelShare'>, keyof LiveTests>> = {
  instrument: 'instruments',
  run: 'runs',
  log: 'logs',
  trip: 'trips',
  cutOff: 'cutOffs',
  sensorGate: 'sensorGates',
  cellSet: 'cellSets',
  resistance: 'resistances',
  lead: 'leads',
  joint: 'joints',
  drain: 'drains',
  parallelRun: 'parallelRuns',
  readOut: 'readOuts',
  cellMark: 'cellMarks',
  ruler: 'rulers',
};
const SUBJECTS = Object.keys(PLACES) as (keyof typeof PLACES)[];
const SETS = [
  { set: 'cellSet', member: 'cell', as: 'cells' },
  { set: 'parallelRun', member: 'parallelShare', as: 'shares' },
] as const;

function fold(...entries: Entry[]) {
  return foldRecord(PACK, Object.freeze(entries));
}

/** A sound entry of a subject, with some fields of its value changed. */
function test(subject: LiveTestSubject, part: string, changes: object = {}): Entry {
  return entry(subject, part, Object.freeze({ ...FULL_VALUES[subject].value, ...changes }));
}

const made = (ms: number) => ({ made: stampAt(ms) });
const idsOf = (tests: readonly object[]) => tests.map((one) => (one as { id?: string }).id);

it('folds one entry of each of the 17 subjects into its place, whole', () => {
  const all = Object.entries(FULL_VALUES).map(([subject, { part, value }]) => entry(subject, part, value));
  expect(all).toHaveLength(17);
  const { tests, setAside } = fold(...all);
  expect(setAside).toEqual([]);
  const withId = (subject: LiveTestSubject) => ({ ...FULL_VALUES[subject].value, id: FULL_VALUES[subject].part });
  const expected = Object.fromEntries(SUBJECTS.map((subject) => [PLACES[subject], [withId(subject)]]));
  expect(tests).toEqual({
    ...expected,
    // A passage has no name; it is known by its time.
    sensorGates: [FULL_VALUES.sensorGate.value],
    cellSets: [{ ...withId('cellSet'), cells: [{ ...FULL_VALUES.cell.value, number: 8 }] }],
    parallelRuns: [{ ...withId('parallelRun'), shares: [{ ...FULL_VALUES.parallelShare.value, number: 2 }] }],
  });
  expect(Object.keys(LIVE_TEST_SUBJECTS)).toHaveLength(SUBJECTS.length + SETS.length);
});

describe.each(SUBJECTS.filter((subject) => subject !== 'sensorGate'))('%s', (subject) => {
  const place = PLACES[subject];
  const [first, second] = subject === 'log' ? [DIGEST_A, DIGEST_B] : [A, B];

  it('comes in the order made, though the ids say otherwise and it was corrected later', () => {
    const late = { ...test(subject, first, made(2000)), at: stampAt(5000) };
    const early = { ...test(subject, second, made(1000)), at: stampAt(9000) };
    expect(idsOf(fold(late, early).tests[place])).toEqual([second, first]);
  });

  it('comes in the order of ids where two were made at one stamp, however they arrive', () => {
    const [one, other] = [test(subject, first), test(subject, second)];
    expect(idsOf(fold(other, one).tests[place])).toEqual([first, second]);
    expect(idsOf(fold(one, other).tests[place])).toEqual([first, second]);
  });

  it('is gone once deleted, and back with its value when written again', () => {
    expect(fold(test(subject, first), tombstone(subject, first)).tests[place]).toEqual([]);
    const again = { ...test(subject, first), at: stampAt(3000) };
    expect(idsOf(fold(test(subject, first), tombstone(subject, first), again).tests[place])).toEqual([first]);
  });

  it('is set aside with key and reason when its stamp is none, and the other one is folded', () => {
    const { tests, setAside } = fold(test(subject, first, { made: 'yesterday' }), test(subject, second));
    expect(setAside).toEqual([{ key: `${PACK}/${subject}/${first}`, reason: 'made: must be a clock stamp' }]);
    expect(idsOf(tests[place])).toEqual([second]);
  });

  it('keeps the field of a newer version', () => {
    expect(fold(test(subject, first, { moonPhase: 'waning' })).tests[place]).toMatchObject([{ moonPhase: 'waning' }]);
  });

  it('of another pack is passed over', () => {
    const foreign: Entry = { ...test(subject, first), key: [OTHER_PACK, subject, first] };
    expect(fold(foreign).tests[place]).toEqual([]);
  });
});

describe.each(SETS)('members of a $set', ({ set, member, as }) => {
  const place = PLACES[set];
  const numbersOf = (one: object | undefined) =>
    (one as Record<string, { number: number }[]>)[as]?.map((m) => m.number);

  it('come in order of number, 2 before 10', () => {
    const { tests } = fold(...[10, 2, 1].map((number) => test(member, `${A}/${number}`)), test(set, A));
    expect(numbersOf(tests[place][0])).toEqual([1, 2, 10]);
  });

  it('go to their own set, and a set without any has 0', () => {
    const { tests } = fold(test(set, A), test(set, B), test(set, C), test(member, `${A}/1`), test(member, `${B}/2`));
    expect(tests[place].map(numbersOf)).toEqual([[1], [2], []]);
  });

  it('without a set are left alone, and found again when the set is back', () => {
    const rest = [test(member, `${A}/1`), test(member, `${A}/2`)];
    const { tests, setAside } = fold(...rest, test(set, B));
    expect([idsOf(tests[place]), numbersOf(tests[place][0]), setAside]).toEqual([[B], [], []]);
    expect(fold(...rest, test(set, A), tombstone(set, A)).tests[place]).toEqual([]);
    expect(numbersOf(fold(...rest, test(set, A)).tests[place][0])).toEqual([1, 2]);
  });

  it('are left out once deleted: 1 of 2 stays', () => {
    const { tests } = fold(test(set, A), test(member, `${A}/1`), test(member, `${A}/2`), tombstone(member, `${A}/1`));
    expect(numbersOf(tests[place][0])).toEqual([2]);
  });

  it('are set aside with key and reason when the number is no number', () => {
    const { tests, setAside } = fold(test(set, A), test(member, `${A}/first`), test(member, `${A}/1`));
    expect(setAside).toEqual([
      { key: `${PACK}/${member}/${A}/first`, reason: `"${A}/first" is not a part of ${member}` },
    ]);
    expect(numbersOf(tests[place][0])).toEqual([1]);
  });
});

it('sets aside a run of −5 Ah with its reason and keeps the other run', () => {
  const { tests, setAside } = fold(test('run', A, { chargeAh: -5 }), test('run', B));
  expect(setAside).toEqual([
    { key: `${PACK}/run/${A}`, reason: 'chargeAh: Invalid value: Expected >0 but received -5' },
  ]);
  expect(idsOf(tests.runs)).toEqual([B]);
});

it('has the passages of the sensor gate in the order passed', () => {
  const { tests } = fold(test('sensorGate', A, { passedAtMs: 2000 }), test('sensorGate', B, { passedAtMs: 1000 }));
  expect(tests.sensorGates.map(({ passedAtMs }) => passedAtMs)).toEqual([1000, 2000]);
});

it('gives the same object for an entry that has not changed, and another for the one that has', () => {
  const entries = [test('run', A), test('run', B, made(2000)), test('lead', A), test('log', DIGEST_A)];
  const before = fold(...entries).tests;
  const corrected = { ...test('run', B, { ...made(2000), chargeAh: 97 }), at: stampAt(3000) };
  const after = fold(...entries, corrected).tests;
  expect(after.runs[0]).toBe(before.runs[0]);
  expect(after.leads[0]).toBe(before.leads[0]);
  expect(after.logs[0]).toBe(before.logs[0]);
  expect(after.runs[1]).not.toBe(before.runs[1]);
  expect(after.runs.map(({ chargeAh }) => chargeAh)).toEqual([98.4, 97]);
});

it('leaves 0 traces in the entries it folded', () => {
  const value = { ...FULL_VALUES.cellSet.value };
  const given = entry('cellSet', A, value);
  fold(given, test('cell', `${A}/1`));
  expect(value).toEqual(FULL_VALUES.cellSet.value);
});
