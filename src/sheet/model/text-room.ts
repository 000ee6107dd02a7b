/**
 * How much room a text takes before any typeface is at hand, in em, the size of the letters: the advance widths of our
 * typeface (public/fonts), rounded up to a twentieth, so that nothing is found wider on paper.
 */
const WIDTHS_EM: readonly (readonly [number, string])[] = [
  [0.3, " 'ijl!,.:;’"],
  [0.4, '()[]f{|}-/Irt·'],
  [0.55, '?svyzJacegkxL“”"*'],
  [0.6, '0123456789+$=<>EFSTYZbdhnopqu–'],
  [0.65, 'ACKPRVX'],
  [0.75, 'BDGUHNOQ&#Ω'],
  [0.9, 'mwMW@→…✓½—'],
];
const WIDTH_OF = new Map(
  WIDTHS_EM.flatMap(([widthEm, letters]) => [...letters].map((letter) => [letter, widthEm] as const)),
);
/** Of every other letter: a capital with an accent, or a small one; one that the typeface lacks is a box of 0.6. */
const CAPITAL = /[\p{Lu}%æœŉ¼¾©]/u;
const OTHER_EM = { capital: 1, small: 0.65 } as const;
/** Room that a cut in a long word may leave unused. */
const WIDEST_EM = 1;
const SPACE_EM = 0.3;

export interface TextRoom {
  lines: number;
  widthEm: number;
}

/** Lines that a text takes when it is broken at spaces; a word longer than a line is broken anywhere. */
export function linesOf(text: string, widthEm: number): number {
  return brokenAt(wordsOf(text), widthEm).length;
}

/** The text on one line of words, cut after the last word that fits and ended with "…" where it is longer. */
export function cutTo(text: string, { lines, widthEm }: TextRoom): string {
  const words = wordsOf(text);
  if (brokenAt(words, widthEm).length <= lines) return words.join(' ');
  const kept = words.slice();
  while (kept.length > 1 && brokenAt([...kept, '…'], widthEm).length > lines) kept.pop();
  if (kept.length > 1) return `${kept.join(' ').replace(/[\s.,:;–-]+$/u, '')} …`;
  return cutWord(kept[0] ?? '', { lines, widthEm });
}

function cutWord(word: string, { lines, widthEm }: TextRoom): string {
  const letters = [...word];
  while (letters.length > 0 && emOf(`${letters.join('')}…`) > lines * (widthEm - WIDEST_EM)) letters.pop();
  return `${letters.join('')}…`;
}

function wordsOf(text: string): string[] {
  return text.split(/\s+/u).filter((word) => word !== '');
}

/** Width of every line. */
function brokenAt(words: readonly string[], widthEm: number): number[] {
  const lines: number[] = [];
  let used = Number.POSITIVE_INFINITY;
  for (const word of words) {
    let width = emOf(word);
    if (used + SPACE_EM + width <= widthEm) {
      used += SPACE_EM + width;
      lines[lines.length - 1] = used;
      continue;
    }
    // Each piece of a long word may leave a letter's room unused.
    for (; width > widthEm; width -= widthEm - WIDEST_EM) lines.push(widthEm);
    used = width;
    lines.push(used);
  }
  return lines;
}

function emOf(text: string): number {
  let widthEm = 0;
  for (const letter of text) widthEm += letterEm(letter);
  return widthEm;
}

function letterEm(letter: string): number {
  return WIDTH_OF.get(letter) ?? (CAPITAL.test(letter) ? OTHER_EM.capital : OTHER_EM.small);
}
