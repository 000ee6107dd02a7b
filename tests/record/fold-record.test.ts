import { expect, it } from 'vitest';
import { foldRecord } from '../../src/record/fold-record.ts';
import type { Entry } from '../../src/schema/entry.ts';
import {
  attachmentValue,
  closingValue,
  entry,
  HASH_1,
  HASH_2,
  leader,
  OTHER_PACK,
  PACK,
  PHOTO,
  photoValue,
  SECOND_PHOTO,
  stampAt,
  tombstone,
  voiceValue,
} from './made-entries.ts';

const CALLOUT_1 = '1'.repeat(32);
const CALLOUT_2 = '2'.repeat(32);
const CALLOUT_3 = '3'.repeat(32);
/** By hand, from DESIGN §2: every kind of live test, none of any. */
const NO_TESTS = {
  instruments: [],
  runs: [],
  logs: [],
  trips: [],
  cutOffs: [],
  sensorGates: [],
  cellSets: [],
  resistances: [],
  leads: [],
  joints: [],
  drains: [],
  parallelRuns: [],
  readOuts: [],
  cellMarks: [],
  rulers: [],
};
const grade = { kind: 'grade', grade: 'weak', evidence: 'seen' };

it('folds no entries into an empty record that is not here and asks the whole route', () => {
  expect(foldRecord(PACK, [])).toEqual({
    packId: PACK,
    here: false,
    demo: false,
    checklist: null,
    carriedFrom: null,
    retestOf: null,
    route: 'whole',
    keepOriginals: false,
    nameplate: {},
    answers: {},
    facts: {},
    photos: [],
    tests: NO_TESTS,
    makeSafe: [],
    states: {},
    state: null,
    afterwards: {},
    words: {},
    closings: [],
    reopenings: [],
    attachments: [],
    offers: [],
    remedyNotes: {},
    takes: [],
    secondReaders: [],
    voices: [],
    sheet: { now: 'open' },
    newestAt: null,
    sheetAt: null,
    setAside: [],
  });
});

it('folds one entry of every subject but the live tests into its place, newest stamp 16000 ms, of the sheet 13000 ms', () => {
  const passed = {
    passedAtMs: 5000,
    day: '2026-11-24',
    packVoltageV: 26.4,
    chargeState: 'low',
    company: 'second-person',
    coveredTerminalsPhoto: PHOTO,
    acknowledged: ['cells-stay-live'],
  };
  const retestOf = { packId: OTHER_PACK, kind: 'sample', label: 'Wren 24 · sample 1' };
  const closing = closingValue(1);
  const reopening = { after: HASH_1, reason: 'A photo was found.', openedAtMs: 11_000 };
  const attachment = attachmentValue('makerReply', HASH_1);
  const offer = { kind: 'price', price: 399, currency: 'EUR', made: stampAt(1000) };
  const remedyNote = { price: 4, currency: 'EUR', timeMin: 20 };
  const take = { label: 'Close-ups', startedAtMs: 13_500, made: stampAt(1000) };
  const takeMark = { kind: 'word', label: 'the lid', atMs: 14_000 };
  const secondReader = { label: 'R. Teal', blind: true, made: stampAt(1000) };
  const voice = voiceValue();
  const record = foldRecord(
    PACK,
    Object.freeze([
      entry('pack', 'made', { demo: true }),
      entry('pack', 'checklist', { id: 'lfp-drop-in', version: '1.1.0', sha256: 'f'.repeat(64) }),
      entry('pack', 'carriedFrom', { id: 'lfp-drop-in', version: '1.0.0', sha256: 'e'.repeat(64) }),
      entry('pack', 'retestOf', retestOf),
      entry('pack', 'route', 'short'),
      entry('pack', 'keepOriginals', true),
      entry('nameplate', 'ratedCapacityAh', 100),
      entry('nameplate', 'name', 'Wren 24'),
      entry('answer', 'cell-vents', grade),
      entry('fact', 'metal-case', { choice: 'yes', note: 'steel' }),
      entry('photo', PHOTO, photoValue()),
      entry('photoItem', `${PHOTO}/cell-vents`, true),
      entry('callout', CALLOUT_1, leader(PHOTO, stampAt(1000))),
      entry('makeSafe', CALLOUT_1, passed),
      entry('state', 'untouched', { enteredAtMs: 6000, leftBehind: [] }),
      entry('state', 'liveOpen', { enteredAtMs: 7000, leftBehind: ['lid-seal'] }),
      entry('afterwards', 'fate', 'in-parts'),
      entry('words', 'opinion', 'Neat work.', 9000),
      entry('closing', HASH_1, closing, 10_000),
      entry('reopening', CALLOUT_1, reopening, 11_000),
      entry('attachment', CALLOUT_2, attachment, 12_000),
      entry('offer', CALLOUT_1, offer, 14_000),
      entry('remedyNote', 'turn-lug', remedyNote, 13_000),
      entry('take', CALLOUT_1, take, 15_000),
      entry('takeMark', `${CALLOUT_1}/${CALLOUT_2}`, takeMark, 16_000),
      entry('secondReader', CALLOUT_1, secondReader),
      entry('secondAnswer', `${CALLOUT_1}/cell-vents`, grade),
      entry('voice', HASH_2, voice),
    ]) as Entry[],
  );
  expect(record).toEqual({
    packId: PACK,
    here: true,
    demo: true,
    checklist: { id: 'lfp-drop-in', version: '1.1.0', sha256: 'f'.repeat(64) },
    carriedFrom: { id: 'lfp-drop-in', version: '1.0.0', sha256: 'e'.repeat(64) },
    retestOf,
    route: 'short',
    keepOriginals: true,
    nameplate: { ratedCapacityAh: 100, name: 'Wren 24' },
    answers: { 'cell-vents': grade },
    facts: { 'metal-case': 'yes' },
    photos: [
      {
        ...photoValue(),
        id: PHOTO,
        itemIds: ['cell-vents'],
        callouts: [{ ...leader(PHOTO, stampAt(1000)), id: CALLOUT_1, number: 1 }],
      },
    ],
    tests: NO_TESTS,
    makeSafe: [passed],
    states: {
      untouched: { enteredAtMs: 6000, leftBehind: [] },
      liveOpen: { enteredAtMs: 7000, leftBehind: ['lid-seal'] },
    },
    state: 'liveOpen',
    afterwards: { fate: 'in-parts' },
    words: { opinion: 'Neat work.' },
    closings: [{ ...closing, sha256: HASH_1 }],
    reopenings: [{ ...reopening, id: CALLOUT_1 }],
    attachments: [{ ...attachment, id: CALLOUT_2 }],
    sheet: { now: 'revising', sha256: HASH_1, revision: 1, reason: 'A photo was found.', openedAtMs: 11_000 },
    offers: [{ ...offer, id: CALLOUT_1 }],
    remedyNotes: { 'turn-lug': remedyNote },
    takes: [{ ...take, id: CALLOUT_1, marks: [{ ...takeMark, id: CALLOUT_2 }] }],
    secondReaders: [{ ...secondReader, id: CALLOUT_1, answers: { 'cell-vents': grade } }],
    voices: [{ ...voice, id: HASH_2 }],
    newestAt: stampAt(16_000),
    sheetAt: stampAt(13_000),
    setAside: [],
  });
});

it('numbers leaders 1, 2 in the order made, leaves an arrow without a number, and sorts photos by made', () => {
  const { photos } = foldRecord(PACK, [
    entry('photo', PHOTO, photoValue(stampAt(4000))),
    entry('photo', SECOND_PHOTO, photoValue(stampAt(3000))),
    entry('callout', CALLOUT_1, leader(PHOTO, stampAt(3000))),
    entry('callout', CALLOUT_2, { ...leader(PHOTO, stampAt(2000)), kind: 'arrow' }),
    entry('callout', CALLOUT_3, leader(PHOTO, stampAt(1000))),
  ]);
  expect(photos.map(({ id }) => id)).toEqual([SECOND_PHOTO, PHOTO]);
  expect(photos[1]?.callouts.map(({ id, number }) => [id, number])).toEqual([
    [CALLOUT_3, 1],
    [CALLOUT_2, null],
    [CALLOUT_1, 2],
  ]);
});

it('sets aside a grade of "perfect" with its key and reason and folds the other answer', () => {
  const record = foldRecord(PACK, [
    entry('answer', 'cell-vents', { ...grade, grade: 'perfect' }, 5000),
    entry('answer', 'bus-bars', grade, 1000),
  ]);
  expect(record.setAside).toEqual([
    { key: `${PACK}/answer/cell-vents`, reason: expect.stringMatching(/^grade: .*"perfect"/) },
  ]);
  expect(record.answers).toEqual({ 'bus-bars': grade });
  expect(record.newestAt).toBe(stampAt(1000));
});

it('keeps unknown fields of a value and leaves unknown subjects and parts alone', () => {
  const record = foldRecord(PACK, [
    entry('answer', 'bus-bars', { ...grade, torqueNm: 6 }),
    entry('newSubject', 'x', { chargeAh: 99 }),
    entry('nameplate', 'colour', 'grey'),
  ]);
  expect(record.answers['bus-bars']).toEqual({ ...grade, torqueNm: 6 });
  expect(record.nameplate).toEqual({});
  expect(record.setAside).toEqual([]);
});

it('folds a tombstone to absence, and a put-away pack to not here', () => {
  const record = foldRecord(PACK, [
    entry('pack', 'made', {}, 1000),
    tombstone('pack', 'made', 2000),
    entry('answer', 'bus-bars', grade, 1000),
    tombstone('answer', 'bus-bars', 2000),
  ]);
  expect(record.here).toBe(false);
  expect(record.answers).toEqual({});
  expect(record.newestAt).toBe(stampAt(2000));
});

it('passes over the entries of another pack', () => {
  const record = foldRecord(PACK, [{ ...entry('pack', 'made', {}), key: [OTHER_PACK, 'pack', 'made'] }]);
  expect(record.here).toBe(false);
});

it('does not show a callout or a link of a photo that is gone, and finds both again when it is back', () => {
  const rest = [entry('callout', CALLOUT_1, leader(PHOTO, stampAt(1))), entry('photoItem', `${PHOTO}/bus-bars`, true)];
  expect(foldRecord(PACK, [...rest, tombstone('photo', PHOTO)]).photos).toEqual([]);
  const [back] = foldRecord(PACK, [...rest, entry('photo', PHOTO, photoValue())]).photos;
  expect([back?.itemIds, back?.callouts.length]).toEqual([['bus-bars'], 1]);
});

it('has no answer for an item called "constructor" until one is given', () => {
  expect(foldRecord(PACK, []).answers.constructor).toBeUndefined();
  expect(foldRecord(PACK, [entry('answer', 'constructor', grade)]).answers.constructor).toEqual(grade);
});
