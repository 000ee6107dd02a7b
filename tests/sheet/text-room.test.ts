import { jsPDF } from 'jspdf';
import { expect, it } from 'vitest';
import { cutTo, linesOf } from '../../src/sheet/model/text-room.ts';
import { STYLES } from '../../src/sheet/pdf/text-style.ts';
import { embedTypeface } from '../../src/sheet/pdf/typeface.ts';
import { wrapText } from '../../src/sheet/pdf/wrap-text.ts';
import { FONTS } from './pdf-inputs.ts';

const typeface = embedTypeface(new jsPDF(), FONTS);
const LETTERS = Array.from({ length: 0x17f - 0x20 }, (_, at) => String.fromCharCode(0x21 + at)).filter(
  (letter) => letter.trim() !== '' && typeface.printable(letter) === letter,
);

it('holds every one of at least 250 Latin letters and signs to be as wide as the typeface draws it, or wider', () => {
  expect(LETTERS.length).toBeGreaterThan(250);
  // 40 of them on lines as wide as 20 em: fewer lines by our table than on paper would run off a page.
  const narrower = LETTERS.filter((letter) => {
    const text = Array.from({ length: 40 }, () => letter).join(' ');
    const drawn = wrapText(typeface, text, { style: STYLES.body, width: 20 * STYLES.body.size });
    return linesOf(text, 20) < drawn.length;
  });
  expect(narrower).toEqual([]);
});

it('leaves a text that fits as it is, on one line of words, and cuts another after a whole word', () => {
  expect(cutTo('a lug\n is  loose', { lines: 1, widthEm: 20 })).toBe('a lug is loose');
  expect(cutTo('The strands end short, of the barrel', { lines: 1, widthEm: 12.5 })).toBe('The strands end short …');
  expect(cutTo('W'.repeat(60), { lines: 2, widthEm: 10 })).toMatch(/^W{15,20}…$/);
});

it('takes no line for no words', () => {
  expect(linesOf('', 10)).toBe(0);
  expect(cutTo('  ', { lines: 1, widthEm: 10 })).toBe('');
});
