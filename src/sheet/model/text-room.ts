/**
 * How much room a text takes before any typeface is at hand: by classes of letters, each as wide as its widest member in
 * our typeface, so that nothing is ever found wider on paper. In em, the size of the letters.
 */
const NARROW = /[ 'ijl!,.:;()[\]f{|}\-/Irt’]/;
const WIDE = /[mwMW@%…→✓ÆŒæœ¼½¾©]/;
const CAPITAL = /[\p{Lu}#&]/u;
const WIDTH_EM = { narrow: 0.41, plain: 0.66, capital: 0.76, wide: 1 } as const;

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
  while (letters.length > 0 && emOf(`${letters.join('')}…`) > lines * (widthEm - WIDTH_EM.wide)) letters.pop();
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
    if (used + WIDTH_EM.narrow + width <= widthEm) {
      used += WIDTH_EM.narrow + width;
      lines[lines.length - 1] = used;
      continue;
    }
    // Each piece of a long word may leave a letter's room unused.
    for (; width > widthEm; width -= widthEm - WIDTH_EM.wide) lines.push(widthEm);
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
  if (NARROW.test(letter)) return WIDTH_EM.narrow;
  if (WIDE.test(letter)) return WIDTH_EM.wide;
  return CAPITAL.test(letter) ? WIDTH_EM.capital : WIDTH_EM.plain;
}
