import { describe, expect, it } from 'vitest';
import { ENTRY_LIMITS, FILE_LIMITS, whyNotPlainJson } from '../../src/schema/plain-json.ts';

const nested = (levels: number) => JSON.parse('['.repeat(levels) + ']'.repeat(levels)) as unknown;

describe('of an entry', () => {
  it.each<[string, unknown, string | null]>([
    ['a note of 20 000 units', 'n'.repeat(20_000), null],
    ['a text of 20 001 units', 'n'.repeat(20_001), 'holds a text of 20001 characters'],
    ['10 MB in one text', { v: { note: 'n'.repeat(1e7) } }, 'holds a text of 10000000 characters'],
    ['32 levels', nested(33), null],
    ['33 levels', nested(34), 'nested deeper than 32 levels'],
    ['19 999 numbers in a list', Array(19_999).fill(0), null],
    ['20 000 numbers in a list', Array(20_000).fill(0), 'holds more than 20000 values'],
    ['a name of 200 characters', { ['n'.repeat(200)]: 1 }, null],
    ['a name of 201 characters', { ['n'.repeat(201)]: 1 }, 'holds a name of 201 characters'],
    ['a name without a letter', { '': 1 }, 'holds a name without a letter'],
    ['a name turned round', { 'a\u202Eb': 1 }, 'holds a name with U+202E in it'],
    ['a name with half a character', { '\ud800': 1 }, 'holds a name that is not well-formed text'],
    ['a text with half a character', '\udc00', 'holds text with half a character in it'],
    ['1e400', JSON.parse('1e400'), 'holds the number Infinity'],
    ['a date', new Date(0), 'holds an object that is not plain data'],
    ['a function', () => 0, 'holds a value of type function'],
  ])('%s', (_, value, reason) => {
    expect(whyNotPlainJson(value, ENTRY_LIMITS)).toBe(reason);
  });

  it.each(['__proto__', 'prototype', 'constructor', 'toString', 'valueOf', 'hasOwnProperty', '__defineGetter__'])(
    'refuses the name %s, which every object has or a careless copy reaches',
    (name) => {
      expect(whyNotPlainJson(JSON.parse(`{"a":[{"${name}":1}]}`), ENTRY_LIMITS)).toBe(
        `holds the forbidden key "${name}"`,
      );
    },
  );
});

it('lets a file hold 100 times as many values, and texts no longer', () => {
  expect(whyNotPlainJson(Array(1_999_999).fill(0))).toBeNull();
  expect(whyNotPlainJson(Array(2_000_000).fill(0))).toBe('holds more than 2000000 values');
  expect(whyNotPlainJson(['n'.repeat(FILE_LIMITS.textLength + 1)])).toBe('holds a text of 20001 characters');
});
