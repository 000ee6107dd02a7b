import { type TextFace, textWidth } from './text-width.ts';

/** Breaks a text at spaces into lines no wider than `width`; a single longer word is cut between characters. */
export function textLines(text: string, face: TextFace, width: number): string[] {
  return text.split(/\r?\n/).flatMap((paragraph) => linesOfParagraph(paragraph, face, width));
}

function linesOfParagraph(paragraph: string, face: TextFace, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of paragraph.split(/\s+/).filter((part) => part !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (textWidth(longer, face) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = cutWord(word, face, width);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? '';
  }
  return line === '' ? lines : [...lines, line];
}

function cutWord(word: string, face: TextFace, width: number): string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const character of word) {
    if (piece !== '' && textWidth(piece + character, face) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += character;
  }
  return [...pieces, piece];
}
