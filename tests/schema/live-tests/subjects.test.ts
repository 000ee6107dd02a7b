import { describe, expect, it } from 'vitest';
import { checkEntry } from '../../../src/schema/check-entry.ts';
import { LIVE_TEST_SUBJECTS, type LiveTestSubject } from '../../../src/schema/live-tests/live-tests.ts';
import { entry, tombstone } from '../../record/made-entries.ts';
import { FULL_VALUES, TEST_ID } from './full-values.ts';

const SUBJECTS = Object.keys(LIVE_TEST_SUBJECTS) as LiveTestSubject[];

/** What a test must say; everything else may be absent. By hand from the shapes' own words. */
const NEEDED: Readonly<Record<LiveTestSubject, readonly string[]>> = {
  instrument: ['name', 'made'],
  run: ['made'],
  log: ['name', 'byteCount', 'made'],
  trip: ['currentA', 'heldForS', 'opened', 'made'],
  cutOff: ['kind', 'acted', 'made'],
  sensorGate: ['passedAtMs', 'day', 'acknowledged'],
  cellSet: ['state', 'made'],
  cell: [],
  resistance: ['method', 'of', 'made'],
  lead: ['place', 'form', 'made'],
  joint: ['place', 'made'],
  drain: ['currentMa', 'made'],
  parallelRun: ['of', 'made'],
  parallelShare: [],
  readOut: ['way', 'made'],
  cellMark: ['text', 'read', 'made'],
  ruler: ['photoId', 'corners', 'from', 'to', 'made'],
};

it('has 17 subjects of live tests', () => {
  expect(SUBJECTS).toHaveLength(17);
});

describe.each(SUBJECTS)('%s', (subject) => {
  const { part, value } = FULL_VALUES[subject];
  const needed = NEEDED[subject];

  it('has a full value here that leaves out 0 of its fields', () => {
    expect(Object.keys(value).sort()).toEqual(Object.keys(LIVE_TEST_SUBJECTS[subject].value.entries).sort());
  });

  it('passes with every field, unchanged', () => {
    const given = Object.freeze(entry(subject, part, Object.freeze({ ...value })));
    expect(checkEntry(given)).toEqual({ ok: true, entry: given, known: true });
  });

  it('keeps a field of a newer version', () => {
    const given = entry(subject, part, { ...value, moonPhase: 'waning' });
    const check = checkEntry(given);
    expect(check.ok && check.entry.v).toEqual({ ...value, moonPhase: 'waning' });
  });

  it('passes with only what it must say', () => {
    const least = Object.fromEntries(Object.entries(value).filter(([field]) => needed.includes(field)));
    expect(checkEntry(entry(subject, part, least))).toMatchObject({ ok: true, known: true });
  });

  it.each([...needed])('is refused without %s, which is named', (field) => {
    const { [field]: _, ...rest } = value;
    const check = checkEntry(entry(subject, part, rest));
    expect(check.ok ? 'accepted' : check.reason).toMatch(new RegExp(`^${field}: Invalid key: Expected "${field}"`));
  });

  it.each([
    ['null', null],
    ['a word', 'word'],
    ['a list', []],
    ['a number', 1],
  ])('is refused as %s', (_, v) => {
    expect(checkEntry(entry(subject, part, v))).toMatchObject({ ok: false });
  });

  it('may be deleted', () => {
    expect(checkEntry(tombstone(subject, part))).toMatchObject({ ok: true, known: true });
  });

  const isHash = subject === 'log';
  const isMember = subject === 'cell' || subject === 'parallelShare';
  const parts = {
    'a random id': [TEST_ID, !isHash && !isMember],
    'a hash': ['f'.repeat(64), isHash],
    'an id and number 1': [`${TEST_ID}/1`, isMember],
    'an id and number 1000': [`${TEST_ID}/1000`, isMember],
    'an id and number 0': [`${TEST_ID}/0`, false],
    'an id and number 01': [`${TEST_ID}/01`, false],
    'an id and number 1001': [`${TEST_ID}/1001`, false],
    'an id and a slash': [`${TEST_ID}/`, false],
    'an id and two numbers': [`${TEST_ID}/1/2`, false],
    'an id in capitals': ['A'.repeat(32), false],
    'an id of 31 digits': ['4'.repeat(31), false],
    'a word': ['gentle', false],
  } as const;

  it.each(Object.entries(parts))('has %s for its part, or refuses it', (_, [given, fits]) => {
    const check = checkEntry(entry(subject, given, value));
    if (fits) expect(check).toMatchObject({ ok: true, known: true });
    else expect(check).toEqual({ ok: false, reason: `"${given}" is not a part of ${subject}` });
  });
});
