import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellNumber } from '../../src/logs/cell-kind.ts';
import { scanEnd, scanNumber } from '../../src/logs/scan-number.ts';

const POINT = { separator: 44, decimalMark: 46, lineEnd: 10 };
const COMMA = { separator: 59, decimalMark: 44, lineEnd: 10 };

/** The number of a cell as the row reader takes it: fast, or else slow. */
function read(text: string, marks = POINT): number {
  const fast = scanNumber(new TextEncoder().encode(`${text}\n`), 0, marks);
  return scanEnd >= 0 ? fast : cellNumber(text, marks === POINT ? '.' : ',');
}

describe('scanNumber', () => {
  it('reads every double as Number does, to the last bit', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(read(String(value))).toBe(Number(String(value)));
      }),
      { numRuns: 5000 },
    );
  });

  it('reads figures, point and exponent in every arrangement as Number does', () => {
    const figures = fc.stringMatching(/^[0-9]{1,20}$/);
    fc.assert(
      fc.property(
        figures,
        figures,
        fc.integer({ min: -40, max: 40 }),
        fc.constantFrom('', '-', '+'),
        (a, b, e, sign) => {
          for (const text of [
            `${sign}${a}.${b}`,
            `${sign}${a}`,
            `${sign}${a}.${b}e${e}`,
            `${sign}.${b}E${e}`,
            `${sign}${a}.`,
          ]) {
            expect(read(text)).toBe(Number(text));
            expect(read(text.replace('.', ','), COMMA)).toBe(Number(text));
          }
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('takes 15 figures and a power of 22 the fast way, and hands on what is past that', () => {
    const fast = (text: string) => {
      scanNumber(new TextEncoder().encode(`${text}\n`), 0, POINT);
      return scanEnd >= 0;
    };
    expect(fast('123456789012345e22')).toBe(true);
    expect(fast('1e-22')).toBe(true);
    expect(fast('9007199254740991')).toBe(true);
    expect(fast('9007199254740993')).toBe(false);
    expect(fast('1e23')).toBe(false);
    expect(fast('1e-23')).toBe(false);
  });

  it('stops on the separator or the line end, past blanks, quotes and a carriage return', () => {
    const end = (text: string) => {
      scanNumber(new TextEncoder().encode(text), 0, POINT);
      return scanEnd;
    };
    expect(end('3.31,1\n')).toBe(4);
    expect(end('  3.31  ,1\n')).toBe(8);
    expect(end('"3.31",1\n')).toBe(6);
    expect(end('3.31\r\n')).toBe(5);
  });

  it.each(['', ',', '-', '.', 'e5', '1e', '1e+', '1.2.3', '1 2', 'abc', '3.31V', '"3.31', '0x10', '−5'])(
    'takes %j for no plain number',
    (text) => {
      scanNumber(new TextEncoder().encode(`${text}\n`), 0, POINT);
      expect(scanEnd).toBe(-1);
    },
  );

  it.each([
    ['6.78E-05', 6.78e-5],
    ['-0', -0],
    ['3.40E+38', 3.4e38],
    ['"1,234.5"', 1234.5],
    ['−2500', -2500],
    ['13.2 V', 13.2],
    ['"25.5"', 25.5],
  ])('reads %s as %f', (text, value) => {
    expect(read(text)).toBe(value);
  });

  it.each([
    ['3,2196126E+000', 3.2196126],
    ['1.234,5', 1234.5],
    ['-0,25', -0.25],
  ])('reads %s with a decimal comma as %f', (text, value) => {
    expect(read(text, COMMA)).toBe(value);
  });
});
