import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { csvText } from '../../../src/sheet/csv/csv-text.ts';

/** A tab, a return, or a sign of a formula after whatever space, narrow or full width. */
const FORMULA = /^(?:[\t\r]|\s*[=+\-@\uff1d\uff0b\uff0d\uff20])/;

describe('csvText', () => {
  // The three examples of RFC 4180, section 2, rules 1, 6 and 7.
  it('writes the examples of RFC 4180 to the letter', () => {
    expect(csvText([['aaa', 'bbb', 'ccc']])).toBe('aaa,bbb,ccc\r\n');
    expect(csvText([['aaa', 'b\r\nbb', 'ccc']])).toBe('aaa,"b\r\nbb",ccc\r\n');
    expect(csvText([['aaa', 'b"bb', 'ccc']])).toBe('aaa,"b""bb",ccc\r\n');
  });

  it('ends every line with CRLF, quotes a comma, leaves null empty and numbers bare', () => {
    expect(
      csvText([
        ['Pack', 'Score'],
        ['Wren, 24', 58.9],
        [null, -0.5],
      ]),
    ).toBe('Pack,Score\r\n"Wren, 24",58.9\r\n,-0.5\r\n');
  });

  it('writes nothing for no rows, and a row of one empty field as two quotes', () => {
    expect(csvText([])).toBe('');
    expect(csvText([[null], ['']])).toBe('""\r\n""\r\n');
  });

  it.each([
    ['=HYPERLINK("http://x","y")', `"'=HYPERLINK(""http://x"",""y"")"\r\n`],
    ['+1', "'+1\r\n"],
    ['-1+2', "'-1+2\r\n"],
    ['@SUM(A1)', "'@SUM(A1)\r\n"],
    ['\t=1', "'\t=1\r\n"],
    ['\r=1', `"'\r=1"\r\n`],
    [' =1', "' =1\r\n"],
    ['\u00a0\u3000-1', "'\u00a0\u3000-1\r\n"],
    ['\ufeff@A1', "'\ufeff@A1\r\n"],
    ['\n+1', `"'\n+1"\r\n`],
    ['\uff1d1', "'\uff1d1\r\n"],
    ['\uff0b1', "'\uff0b1\r\n"],
    ['\uff0d1', "'\uff0d1\r\n"],
    ['\uff20A1', "'\uff20A1\r\n"],
  ])('takes the formula out of %j by an apostrophe in front', (text, line) => {
    expect(csvText([[text]])).toBe(line);
  });

  it('leaves a sign inside a text, and a true minus sign, as they are', () => {
    expect(csvText([['a=b', '\u22125', "'x", ' a']])).toBe("a=b,\u22125,'x, a\r\n");
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('refuses %s', (value) => {
    expect(() => csvText([[value]])).toThrow(`csvText: numbers must be finite, got ${value}`);
  });

  it('is read back by papaparse as it was, but for the apostrophes, for any texts', () => {
    const table = fc.integer({ min: 1, max: 5 }).chain((width) =>
      fc.array(fc.array(fc.string({ unit: 'grapheme', maxLength: 12 }), { minLength: width, maxLength: width }), {
        minLength: 1,
        maxLength: 6,
      }),
    );
    fc.assert(
      fc.property(table, (rows) => {
        const text = csvText(rows);
        // Without its last CRLF: papaparse counts an empty line behind it as one more row.
        const read = Papa.parse(text.slice(0, -2), { header: false, skipEmptyLines: false });
        expect(read.data).toEqual(rows.map((row) => row.map((cell) => (FORMULA.test(cell) ? `'${cell}` : cell))));
        expect(read.data.flat().filter((cell) => FORMULA.test(cell))).toEqual([]);
      }),
    );
  });
});
