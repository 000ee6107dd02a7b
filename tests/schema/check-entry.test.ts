import { expect, it } from 'vitest';
import { checkEntry } from '../../src/schema/check-entry.ts';
import { entry, leader, PACK, PHOTO, photoValue, stampAt, tombstone } from '../record/made-entries.ts';

const grade = { kind: 'grade', grade: 'sound', evidence: 'seen' };
const RANDOM = '4'.repeat(32);
const readings = { kind: 'readings', values: { 'rated-ah': 100, cells: 8 }, evidence: 'measured' };
const overruled = { grade: 'passable', because: 'One cell was read warm.' };

it.each([
  ['an answer', entry('answer', 'cell-vents', grade)],
  ['an answer with a field of a newer version', entry('answer', 'cell-vents', { ...grade, lux: 300 })],
  [
    'a grade that overrules the live tests',
    entry('answer', 'cell-vents', { ...grade, overrules: 'The fuse was bridged.' }),
  ],
  ['two readings', entry('answer', 'bleed-current', readings)],
  ['readings of which none is typed yet', entry('answer', 'bleed-current', { ...readings, values: {} })],
  ['a reading below zero', entry('answer', 'bleed-current', { ...readings, values: { cold: -20.5 } })],
  ['readings overruled with a note', entry('answer', 'bleed-current', { ...readings, note: 'Twice.', overruled })],
  [
    'readings with fields of a newer version',
    entry('answer', 'bleed-current', { ...readings, lux: 3, overruled: { ...overruled, by: 'x' } }),
  ],
  [
    'the definition a pack was carried over from',
    entry('pack', 'carriedFrom', { id: 'lfp-drop-in', version: '1.0.0', sha256: 'f'.repeat(64) }),
  ],
  ['a nameplate field', entry('nameplate', 'ratedCapacityAh', 100)],
  ['a link', entry('photoItem', `${PHOTO}/cell-vents`, true)],
  ['a callout', entry('callout', RANDOM, leader(PHOTO, stampAt(1)))],
  ['a photo', entry('photo', PHOTO, photoValue())],
  ['a tombstone', tombstone('answer', 'cell-vents')],
  ['an entry with a reason', { ...entry('answer', 'cell-vents', grade), why: 'looked again' }],
])('accepts %s and hands it back as it came', (_, given) => {
  const check = checkEntry(Object.freeze(given));
  expect(check).toEqual({ ok: true, entry: given, known: true });
});

it.each([
  ['an unknown subject', entry('newSubject', 'x', { anything: [1, 'two'] })],
  ['an unknown part of a closed list', entry('nameplate', 'colour', 'grey')],
  ['a subject called constructor', entry('constructor', 'x', 1)],
  ['a part called constructor', entry('nameplate', 'constructor', 1)],
])('keeps %s as not known', (_, given) => {
  expect(checkEntry(given)).toEqual({ ok: true, entry: given, known: false });
});

it.each([
  ['nothing', undefined, 'undefined'],
  ['a list', [], 'key'],
  ['a key of two', { ...entry('answer', 'a', grade), key: [PACK, 'answer'] }, 'key'],
  ['a pack id that is a word', { ...entry('answer', 'a', grade), key: ['wren', 'answer', 'a'] }, 'key.0'],
  ['a stamp that is a date', { ...entry('answer', 'a', grade), at: '2026-11-24' }, 'at'],
  ['no value', { key: [PACK, 'answer', 'a'], at: stampAt(1), by: RANDOM }, 'v'],
  ['an unknown grade', entry('answer', 'a', { ...grade, grade: 'perfect' }), 'grade'],
  ['a grade that overrules without a reason', entry('answer', 'a', { ...grade, overrules: '' }), 'overrules'],
  [
    'a grade that overrules for a reason of 3 spaces',
    entry('answer', 'a', { ...grade, overrules: '   ' }),
    'overrules',
  ],
  [
    'a grade that overrules in 121 characters',
    entry('answer', 'a', { ...grade, overrules: 'x'.repeat(121) }),
    'overrules',
  ],
  ['readings without evidence', entry('answer', 'a', { kind: 'readings', values: {} }), 'evidence'],
  ['readings without values', entry('answer', 'a', { kind: 'readings', evidence: 'measured' }), 'values'],
  [
    'a reading in words',
    entry('answer', 'a', { ...readings, values: { cells: '8' } }),
    'values.cells: Invalid type: Expected number',
  ],
  ['a reading that was emptied', entry('answer', 'a', { ...readings, values: { cells: null } }), 'values.cells'],
  [
    'a reading that never ends',
    entry('answer', 'a', { ...readings, values: { cells: Infinity } }),
    'the number Infinity',
  ],
  [
    'a reading under a name in capitals',
    entry('answer', 'a', { ...readings, values: { Cells: 8 } }),
    'values.Cells: must be kebab-case',
  ],
  ['readings in a list', entry('answer', 'a', { ...readings, values: [8] }), 'values.0: must be kebab-case'],
  [
    'readings overruled without a reason',
    entry('answer', 'a', { ...readings, overruled: { grade: 'weak' } }),
    'overruled.because',
  ],
  [
    'readings overruled for a reason of 1 space',
    entry('answer', 'a', { ...readings, overruled: { ...overruled, because: ' ' } }),
    'overruled.because',
  ],
  [
    'readings overruled by "perfect"',
    entry('answer', 'a', { ...readings, overruled: { ...overruled, grade: 'perfect' } }),
    'overruled.grade',
  ],
  ['an answer of an unheard-of kind', entry('answer', 'a', { kind: 'guess' }), 'kind'],
  ['a part in capitals', entry('answer', 'Vents', grade), 'not a part of answer'],
  ['a photo id that is no hash', entry('photo', 'xyz', photoValue()), 'not a part of photo'],
  ['a tombstone with a value', { ...tombstone('answer', 'a'), v: grade }, 'must hold null'],
  ['a live answer that is null', entry('answer', 'a', null), 'Expected Object'],
  ['a list for a value', entry('pack', 'made', []), 'list'],
  ['a number that is no number', entry('nameplate', 'price', Number.NaN), 'NaN'],
  ['a negative price', entry('nameplate', 'price', -1), '0'],
  ['half an emoji', entry('words', 'opinion', 'neat \ud83d'), 'half a character'],
  ['a prototype key', entry('newSubject', 'x', JSON.parse('{"a":[{"__proto__":{"here":true}}]}')), '__proto__'],
  ['a constructor key in a value', entry('newSubject', 'x', JSON.parse('{"constructor":1}')), 'constructor'],
  ['a Date', entry('newSubject', 'x', new Date(0)), 'not plain data'],
  ['40 levels', entry('newSubject', 'x', JSON.parse(`${'['.repeat(40)}${']'.repeat(40)}`)), 'deeper than 32'],
  ['65 points', entry('callout', RANDOM, { ...leader(PHOTO, stampAt(1)), points: Array(65).fill([0, 0]) }), 'points'],
])('refuses %s and says why', (_, given, reason) => {
  const check = checkEntry(given);
  expect(check.ok ? 'accepted' : check.reason).toContain(reason);
});
