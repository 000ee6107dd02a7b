import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readElapsedMs } from '../../../src/app/shoot-clock/read-elapsed.ts';
import { formatElapsed, formatRunning, formatShiftS } from '../../../src/text/format-elapsed.ts';

describe('a time as typed', () => {
  it.each([
    ['0:00', 0],
    ['12:05', 725_000],
    [' 1:02:03 ', 3_723_000],
    ['0:07.4', 7400],
    ['0:07,04', 7040],
    ['90:00', 5_400_000],
  ])('“%s” is %d ms', (text, ms) => {
    expect(readElapsedMs(text)).toBe(ms);
  });
  it.each(['', '90', '12:5', '1:60', '1:2:60', '-1:00', '1:00.', 'a:00', '1:00:00:00', '12:05 min'])(
    '“%s” is no time',
    (text) => {
      expect(readElapsedMs(text)).toBeNull();
    },
  );
});

describe('a time as shown', () => {
  it.each([
    [0, '0:00', '00:00'],
    [59_999, '0:59', '00:59'],
    [600_000, '10:00', '10:00'],
    [3_723_000, '1:02:03', '1:02:03'],
    [-5000, '\u22120:05', '\u221200:05'],
    [-999, '0:00', '00:00'],
  ])('%d ms is %s, running %s', (ms, plain, running) => {
    expect(formatElapsed(ms)).toBe(plain);
    expect(formatRunning(ms)).toBe(running);
  });
  it('refuses what is no number: RangeError', () => {
    expect(() => formatElapsed(Number.NaN)).toThrow(RangeError);
  });
  it('is read back to the same whole second', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 86_400_000 }), (ms) => {
        expect(readElapsedMs(formatElapsed(ms))).toBe(ms - (ms % 1000));
      }),
    );
  });
  it.each([
    [12_500, '+12.5\u00a0s'],
    [-3000, '\u22123\u00a0s'],
    [0, '0\u00a0s'],
  ])('a shift of %d ms is %s', (ms, text) => {
    expect(formatShiftS(ms)).toBe(text);
  });
});
