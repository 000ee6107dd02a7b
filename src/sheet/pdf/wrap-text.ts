import type { TextStyle } from './text-style.ts';
import type { Typeface } from './typeface.ts';

/** Breaks a text into printable lines no wider than `width`: at spaces, never at no-break ones; a longer word is cut. */
export function wrapText(typeface: Typeface, text: string, { style, width }: Wrapping): string[] {
  return text.split(/\r\n|\r|\n/).flatMap((paragraph) => {
    const lines: string[] = [];
    let line = '';
    for (const word of typeface.printable(paragraph).split(/[ \t]+/)) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (typeface.widthOf(longer, style) <= width) {
        line = longer;
        continue;
      }
      if (line !== '') lines.push(line);
      const pieces = cutWord(typeface, word, { style, width });
      lines.push(...pieces.slice(0, -1));
      line = pieces.at(-1) ?? '';
    }
    return [...lines, line];
  });
}

export interface Wrapping {
  style: TextStyle;
  width: number;
}

/** Signs after which a long word may end a line. */
const BREAK_AFTER = /[/\-–—·_.,]/;

function cutWord(typeface: Typeface, word: string, { style, width }: Wrapping): string[] {
  const pieces: string[] = [];
  let rest = word;
  while (typeface.widthOf(rest, style) > width && rest.length > 1) {
    let end = 1;
    let breakEnd = 0;
    while (end < rest.length && typeface.widthOf(rest.slice(0, end + 1), style) <= width) {
      end += 1;
      if (BREAK_AFTER.test(rest.charAt(end - 1))) breakEnd = end;
    }
    const cut = breakEnd > end / 2 ? breakEnd : end;
    pieces.push(rest.slice(0, cut));
    rest = rest.slice(cut);
  }
  return [...pieces, rest];
}
