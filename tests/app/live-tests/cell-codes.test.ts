import { describe, expect, it } from 'vitest';
import { codeCharacters, codeGlance } from '../../../src/app/live-tests/codes/code-glance.ts';
import { foundMarkPut, markPut } from '../../../src/app/live-tests/codes/mark-put.ts';

/** As printed on a cell that a reseller shows; taken apart by the places of GB/T 34014-2017. */
const CODE = '04QCB76836300JBC40000903';
const ID = 'b'.repeat(32);
const made = `000001790000000.000000.${'0'.repeat(32)}`;

describe('a code before it is kept', () => {
  it('reads as its maker and date in a few words', () => {
    expect(codeGlance(CODE)).toBe('reads as maker 04Q, 4\u00a0December\u00a02021');
    expect(codeGlance(CODE.replace('JBC4', 'JBD4'))).toMatch(/^reads as maker 04Q, no valid date$/);
    expect(codeGlance('https://example.org/cell')).toBe('not a cell code of GB/T 34014');
  });

  it('falls into its seven fields: 3, 1, 1, 2, 7, 3 and 7 characters', () => {
    const opening = codeCharacters(CODE).flatMap(({ opens }, index) => (opens ? [index] : []));
    expect([0, ...opening].map((at, place, all) => (all[place + 1] ?? CODE.length) - at)).toEqual([
      3, 1, 1, 2, 7, 3, 7,
    ]);
  });

  it('marks the one character that cannot stand where it does', () => {
    const wrong = codeCharacters('04QXB 76836300J\nBC40000903').filter(({ wrong: isWrong }) => isWrong);
    expect(wrong).toEqual([{ character: 'X', wrong: true, opens: true }]);
    expect(codeCharacters(CODE).some(({ wrong: isWrong }) => isWrong)).toBe(false);
  });
});

describe('a code as an entry', () => {
  const read = Object.freeze({
    id: ID,
    made,
    text: CODE,
    read: 'photo' as const,
    symbology: 'QRCode',
    photoId: 'c'.repeat(64),
  });

  it('mended by hand is a typed one, no longer what the reader saw; its photo stays', () => {
    expect(markPut(ID, read, { key: 'text', value: 'X' })).toEqual({
      subject: 'cellMark',
      part: ID,
      v: { text: 'X', read: 'typed', photoId: 'c'.repeat(64), made },
    });
  });

  it('given a cell stays as it was read; the cell taken away again leaves no field', () => {
    const { id: _id, ...stored } = read;
    expect(markPut(ID, read, { key: 'cellNumber', value: 3 })).toMatchObject({ v: { ...stored, cellNumber: 3 } });
    expect(markPut(ID, { ...read, cellNumber: 3 }, { key: 'cellNumber', value: null })).toMatchObject({ v: stored });
    expect(markPut(ID, { ...read, cellNumber: 3 }, { key: 'cellNumber', value: null })).not.toHaveProperty(
      'v.cellNumber',
    );
  });

  it('is made when it is first written', () => {
    expect(markPut(ID, undefined, { key: 'text', value: CODE })).toMatchObject({
      v: { text: CODE, read: 'typed', made: null },
    });
    const put = foundMarkPut({ text: CODE, symbology: 'DataMatrix', at: [0.5, 0.5] }, 'c'.repeat(64));
    expect(put.part).toMatch(/^[0-9a-f]{32}$/);
    expect(put).toMatchObject({
      subject: 'cellMark',
      v: { text: CODE, read: 'photo', symbology: 'DataMatrix', photoId: 'c'.repeat(64), made: null },
    });
  });
});
