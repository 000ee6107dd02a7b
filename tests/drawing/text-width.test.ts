import { describe, expect, it } from 'vitest';
import { ADVANCE_OTHERS, ADVANCE_RANGES, ADVANCES } from '../../src/drawing/text-advances.ts';
import { textLines } from '../../src/drawing/text-lines.ts';
import { shortened } from '../../src/drawing/text-shortened.ts';
import { knowsWidths, textWidth } from '../../src/drawing/text-width.ts';

const FACE = { size: 10, weight: 400 } as const;

describe('textWidth', () => {
  it('counts figures at 0.6 of the size in every weight: 4 figures at 10 are 24', () => {
    // hmtx of IBM Plex Sans 1.1.0: all figures 600 of 1000 units.
    for (const weight of [400, 500, 600] as const) expect(textWidth('2048', { size: 10, weight })).toBeCloseTo(24, 9);
  });

  it('has one advance for each character of its ranges', () => {
    const count = ADVANCE_RANGES.reduce((sum, [first, last]) => sum + last - first + 1, [...ADVANCE_OTHERS].length);
    for (const weight of [400, 500, 600] as const) expect(ADVANCES[weight]).toHaveLength(count);
  });

  it('takes é the same whether it comes as one character or as two', () => {
    expect(textWidth('e\u0301', FACE)).toBe(textWidth('é', FACE));
  });

  it('has a width for characters beyond the table: a capital’s 0.65 for Ж, a full square for 電', () => {
    expect(textWidth('Ж', FACE)).toBeCloseTo(6.5, 9);
    expect(textWidth('電', FACE)).toBeCloseTo(10, 9);
  });
});

describe('knowsWidths', () => {
  it('knows Ω, é in two characters and a no-break space, and neither 電 nor Ж', () => {
    expect(['25\u00a0Ω', 'cafe\u0301', ''].map(knowsWidths)).toEqual([true, true, true]);
    expect(['a電', 'Ж'].map(knowsWidths)).toEqual([false, false]);
  });
});

describe('textLines', () => {
  it('breaks at spaces, never wider than asked, and loses no word', () => {
    const text = 'A strip of paper lies over two of the four vents';
    const lines = textLines(text, FACE, 90);
    expect(lines.length).toBeGreaterThan(2);
    for (const line of lines) expect(textWidth(line, FACE)).toBeLessThanOrEqual(90);
    expect(lines.join(' ')).toBe(text);
  });

  it('cuts a word that is wider than the line, and keeps all of its 30 letters', () => {
    const lines = textLines('W'.repeat(30), FACE, 50);
    for (const line of lines) expect(textWidth(line, FACE)).toBeLessThanOrEqual(50);
    expect(lines.join('')).toBe('W'.repeat(30));
  });

  it('has no lines for no words', () => {
    expect(textLines('  ', FACE, 50)).toEqual([]);
  });
});

describe('shortened', () => {
  it('leaves a text that fits, and ends one that does not in …', () => {
    expect(shortened('Vents', FACE, 100)).toBe('Vents');
    const short = shortened('Enclosure and everything in it', FACE, 60);
    expect(short.endsWith('…')).toBe(true);
    expect(textWidth(short, FACE)).toBeLessThanOrEqual(60);
  });
});
