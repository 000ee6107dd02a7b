import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellCode } from '../../src/calc/cell-code.ts';
import { cellCodeDate } from '../../src/calc/cell-code-date.ts';

/**
 * Codes as printed on cells that a reseller shows (first two), in a public forum thread (third), and specimens of an
 * open data model of the trade (last two); taken apart by hand by the places of GB/T 34014-2017.
 */
const WORKED = [
  {
    code: '04QCB76836300JBC40000903',
    maker: '04Q',
    product: 'cell',
    chemistryLetter: 'B',
    chemistry: 'lfp',
    specification: '76',
    traceability: '836300J',
    date: { raw: 'BC4', year: 2021, month: 12, day: 4 },
    serial: '0000903',
  },
  {
    code: '001CB240000003B3C0221953',
    maker: '001',
    product: 'cell',
    chemistryLetter: 'B',
    chemistry: 'lfp',
    specification: '24',
    traceability: '0000003',
    date: { raw: 'B3C', year: 2021, month: 3, day: 12 },
    serial: '0221953',
  },
  {
    code: '07HCBC1P22G06AC700002596',
    maker: '07H',
    product: 'cell',
    chemistryLetter: 'B',
    chemistry: 'lfp',
    specification: 'C1',
    traceability: 'P22G06A',
    date: { raw: 'C70', year: 2022, month: 7, day: 31 },
    serial: '0002596',
  },
  {
    code: 'X12CCPM27KLPCLE662382320',
    maker: 'X12',
    product: 'cell',
    chemistryLetter: 'C',
    chemistry: null,
    specification: 'PM',
    traceability: '27KLPCL',
    date: { raw: 'E66', year: 2024, month: 6, day: 6 },
    serial: '2382320',
  },
  {
    code: '4A6PCPM27KLPCLE742946319',
    maker: '4A6',
    product: 'pack',
    chemistryLetter: 'C',
    chemistry: null,
    specification: 'PM',
    traceability: '27KLPCL',
    date: { raw: 'E74', year: 2024, month: 7, day: 4 },
    serial: '2946319',
  },
];
const CODE = '04QCB76836300JBC40000903';

describe('cellCode, 24 characters', () => {
  it.each(WORKED)('takes $code apart', (worked) => {
    expect(cellCode(worked.code)).toEqual({ ok: true, form: 'new', ...worked });
  });

  it('joins two lines, blanks and small letters: the same 24 characters', () => {
    expect(cellCode('04QCB7683630\n0JBC40000903')).toEqual(cellCode(CODE));
    expect(cellCode('\t04qcb 768363\r\n 00JBC4 0000903 ')).toEqual(cellCode(CODE));
  });

  it('knows ternary by E, and gives no meaning to a letter known only from memory', () => {
    expect(cellCode(replaced(CODE, 5, 'E'))).toMatchObject({ chemistryLetter: 'E', chemistry: 'ternary' });
    for (const letter of 'ACDFGZ') {
      expect(cellCode(replaced(CODE, 5, letter))).toMatchObject({ ok: true, chemistryLetter: letter, chemistry: null });
    }
  });

  it.each([
    [4, 'X', 'wrongProduct'],
    [5, 'H', 'invalidCharacter'],
    [2, '-', 'invalidCharacter'],
    [15, 'é', 'invalidCharacter'],
    [9, 'ß', 'invalidCharacter'],
    [18, 'O', 'invalidCharacter'],
    [24, 'A', 'invalidCharacter'],
  ] as const)('names place %d, %s: %s', (at, found, because) => {
    expect(cellCode(replaced(CODE, at, found))).toEqual({ ok: false, because, at, found });
  });

  it('says how many characters there are when there are not 24 or 19', () => {
    expect(cellCode(CODE.slice(1))).toEqual({ ok: false, because: 'wrongLength', found: '23' });
    expect(cellCode(`${CODE}0`)).toEqual({ ok: false, because: 'wrongLength', found: '25' });
    expect(cellCode(' \n')).toEqual({ ok: false, because: 'empty' });
  });

  it.each(WORKED)(
    'notices the halves of $code joined the wrong way round: in the middle, or production part first',
    ({ code }) => {
      for (const text of [swapped(code, 12), swapped(code, 14)]) {
        // One of the ten has, by chance, a C in fourth place; its fifth, a figure, gives it away.
        const at = 'CPM'.includes(text.charAt(3)) ? 5 : 4;
        expect(cellCode(text)).toEqual({ ok: false, because: 'halvesSwapped', at, found: text.charAt(at - 1) });
      }
    },
  );

  it('notices two lines in the wrong order wherever the code is broken', () => {
    for (let at = 1; at < 24; at++) {
      const text = `${CODE.slice(at)}\n${CODE.slice(0, at)}`;
      expect(cellCode(text)).toMatchObject({ ok: false, because: 'halvesSwapped' });
    }
  });

  it('never throws and never reads a text that is not 24 or 19 letters and digits', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), (text) => {
        const found = cellCode(text);
        expect(found.ok && !/^([A-Z0-9]{24}|[A-Z0-9]{19})$/.test(found.code)).toBe(false);
      }),
    );
  });
});

describe('cellCode, 19 characters for second use', () => {
  it('takes 04QCB76BC40000903RC apart, without traceability', () => {
    expect(cellCode('04QCB76BC40000903RC')).toEqual({
      ok: true,
      form: 'secondUse',
      code: '04QCB76BC40000903RC',
      maker: '04Q',
      product: 'cell',
      chemistryLetter: 'B',
      chemistry: 'lfp',
      specification: '76',
      traceability: null,
      date: { raw: 'BC4', year: 2021, month: 12, day: 4 },
      serial: '0000903',
    });
  });

  it.each([
    [18, 'S'],
    [19, 'X'],
    [11, 'B'],
  ] as const)('names place %d, %s', (at, found) => {
    expect(cellCode(replaced('04QCB76BC40000903RC', at, found))).toEqual({
      ok: false,
      because: 'invalidCharacter',
      at,
      found,
    });
  });
});

describe('cellCodeDate', () => {
  // Year and day tables: SOURCES as named in src/calc/tables/cell-code-characters.ts.
  it.each([
    ['111', 2011, 1, 1],
    ['9A9', 2019, 10, 9],
    ['ABA', 2020, 11, 10],
    ['FCH', 2025, 12, 17],
    ['G1J', 2026, 1, 18],
    ['J3P', 2028, 3, 23],
    ['P5R', 2033, 5, 24],
    ['V7V', 2037, 7, 27],
    ['Y4Y', 2040, 4, 30],
    ['Y10', 2040, 1, 31],
    ['E2X', 2024, 2, 29],
  ] as const)('reads %s as %d-%d-%d', (raw, year, month, day) => {
    expect(cellCodeDate(raw)).toEqual({ raw, year, month, day });
  });

  it.each([
    ['I11', 'year'],
    ['O11', 'year'],
    ['Q11', 'year'],
    ['U11', 'year'],
    ['Z11', 'year'],
    ['011', 'year'],
    ['101', 'month'],
    ['1D1', 'month'],
    ['11I', 'day'],
    ['11U', 'day'],
    ['11Z', 'day'],
    ['D2X', 'noSuchDay'],
    ['E2Y', 'noSuchDay'],
    ['C40', 'noSuchDay'],
  ] as const)('marks %s not valid for its %s, and keeps it', (raw, invalid) => {
    expect(cellCodeDate(raw)).toEqual({ raw, invalid });
  });

  it('reads the rest of a code whose date is not valid', () => {
    expect(cellCode(replaced(CODE, 15, 'I'))).toMatchObject({
      ok: true,
      serial: '0000903',
      date: { raw: 'IC4', invalid: 'year' },
    });
  });

  it('refuses two characters', () => {
    expect(() => cellCodeDate('11')).toThrow(RangeError);
  });
});

function replaced(code: string, place: number, character: string): string {
  return code.slice(0, place - 1) + character + code.slice(place);
}

function swapped(code: string, at: number): string {
  return code.slice(at) + code.slice(0, at);
}
