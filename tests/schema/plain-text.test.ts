import { expect, it } from 'vitest';
import { hiddenCharacters, hiddenPlaces, plainText, withPlainTexts } from '../../src/schema/plain-text.ts';

const code = (value: number) => String.fromCodePoint(value);
const range = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => from + i);

/** By hand: C0 but tab, line feed and carriage return, DEL and C1 (Unicode 15.0, 23.1); UAX #9 table 4; 23.8. */
const HIDDEN = [
  ...range(0x00, 0x08),
  0x0b,
  0x0c,
  ...range(0x0e, 0x1f),
  ...range(0x7f, 0x9f),
  ...range(0x202a, 0x202e),
  ...range(0x2066, 0x2069),
  0xfeff,
  ...range(0xfff9, 0xfffb),
];

it('takes out 75 characters and no other of the Basic Multilingual Plane; a carriage return becomes a line feed', () => {
  expect(HIDDEN).toHaveLength(75);
  for (const value of range(0, 0xd7ff).concat(range(0xe000, 0xffff))) {
    const text = `a${code(value)}b`;
    const expected = value === 0x0d ? 'a\nb' : HIDDEN.includes(value) ? 'ab' : text;
    if (plainText(text) !== expected) expect([value.toString(16), plainText(text)]).toEqual(['', expected]);
  }
});

it.each([
  ['line ends of three systems', 'a\r\nb\rc\nd\te', 'a\nb\nc\nd\te'],
  ['a file name turned round by U+202E', 'safe\u202Egnp.exe', 'safegnp.exe'],
  ['Hebrew with its direction marks', 'מטען\u200F 24\u200E V', 'מטען\u200F 24\u200E V'],
  ['a family joined by U+200D', '👩\u200D👩\u200D👧', '👩\u200D👩\u200D👧'],
  ['Persian with U+200C', 'می\u200Cخواهم', 'می\u200Cخواهم'],
  ['ohms and degrees', '3 mΩ at 25 °C ± 1', '3 mΩ at 25 °C ± 1'],
])('%s', (_, given, expected) => {
  expect(plainText(given)).toBe(expected);
  expect(plainText(plainText(given))).toBe(expected);
});

it('names each hidden character once, in order', () => {
  expect(hiddenCharacters('\u202Ea\u0000b\u202E\uFEFF')).toEqual(['U+202E', 'U+0000', 'U+FEFF']);
  expect(hiddenCharacters('plain\n\ttext')).toEqual([]);
});

const value = Object.freeze({ note: 'a\u202Eb', list: [1, null, 'x', 'c\u0007'], inner: { 'na\u2066me': 'plain' } });

it('finds 3 places in a value, one of them the name of a member', () => {
  expect(hiddenPlaces(value)).toEqual([
    { place: 'note', characters: ['U+202E'], isName: false },
    { place: 'list.3', characters: ['U+0007'], isName: false },
    { place: 'inner.name', characters: ['U+2066'], isName: true },
  ]);
  expect(hiddenPlaces({ a: ['b', 2, true, null] })).toEqual([]);
});

it('makes every text of a value plain and leaves numbers, lists and names as they are', () => {
  expect(withPlainTexts(value)).toEqual({ note: 'ab', list: [1, null, 'x', 'c'], inner: { 'na\u2066me': 'plain' } });
});
