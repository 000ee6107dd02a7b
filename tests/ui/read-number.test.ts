import { describe, expect, it } from 'vitest';
import { readNumber } from '../../src/ui/fields/read-number.ts';

describe('a number as a person types it', () => {
  it.each([
    ['12.8', 12.8],
    ['12,8', 12.8],
    [' 1 280 ', 1280],
    ['1\u202f280', 1280],
    ['\u22125', -5],
    ['+3', 3],
    ['.5', 0.5],
    ['7.', 7],
    ['0', 0],
  ])('“%s” is %d', (text, value) => {
    expect(readNumber(text)).toBe(value);
  });

  it.each(['', '   '])('“%s” is not filled in, and never 0', (text) => {
    expect(readNumber(text)).toBe('empty');
  });

  it.each(['12.8 V', '1.280,5', '1e5', '--3', '-', '.', 'Infinity', '0x10', '9'.repeat(400)])(
    '“%s” is not a number here',
    (text) => {
      expect(readNumber(text)).toBeNull();
    },
  );
});
