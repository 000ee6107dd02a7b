import type { Ink, Mark } from './display-list.ts';
import { textLines } from './text-lines.ts';
import { shortened } from './text-shortened.ts';
import { type TextFace, textWidth } from './text-width.ts';

export interface FitText {
  text: string;
  width: number;
  height: number;
  weight: TextFace['weight'];
  /** From the size that is wished for down to the least that is legible. */
  sizes: readonly number[];
}

export interface FittedText {
  lines: string[];
  face: TextFace;
  /** What the lines take, `LINE_HEIGHT` sizes each. */
  height: number;
}

export const LINE_HEIGHT = 1.28;
/** Where the baseline stands below the top of its line, in sizes. */
const BASELINE = 0.98;

/**
 * The words in their box: the largest size at which all of them fit without a word being cut, else the largest at which
 * they fit at all, else as many lines of the least size as there is room for, the last one ending in "…" after a word.
 */
export function fitText({ text, width, height, weight, sizes }: FitText): FittedText {
  const tries = sizes.map((size) => {
    const face = { size, weight };
    return { face, lines: textLines(text, face, width) };
  });
  const fits = tries.filter(({ face, lines }) => lines.length * face.size * LINE_HEIGHT <= height);
  const words = text.split(/\s+/);
  const whole = fits.find(({ face }) => words.every((word) => textWidth(word, face) <= width));
  const best = whole ?? fits[0];
  if (best !== undefined) return { ...best, height: best.lines.length * best.face.size * LINE_HEIGHT };
  const least = tries.at(-1);
  if (least === undefined) throw new RangeError('fitText: sizes must hold at least one, got none');
  const room = Math.max(1, Math.floor(height / (least.face.size * LINE_HEIGHT)));
  const [last = '', next = ''] = least.lines.slice(room - 1);
  const lines = [...least.lines.slice(0, room - 1), endedEarly(`${last} ${next}`, least.face, width)];
  return { face: least.face, lines, height: lines.length * least.face.size * LINE_HEIGHT };
}

/** Ends after a whole word where there is one, else within the only word. */
function endedEarly(text: string, face: TextFace, width: number): string {
  const words = text.trim().split(/\s+/);
  for (let count = words.length - 1; count > 0; count--) {
    const line = `${words
      .slice(0, count)
      .join(' ')
      .replace(/[.,;:]+$/, '')}…`;
    if (textWidth(line, face) <= width) return line;
  }
  return shortened(`${text.trim()}…`, face, width);
}

export interface TextPlace {
  x: number;
  /** Top of the first line. */
  y: number;
  ink: Ink;
  anchor?: 'start' | 'end';
}

export function fittedMarks({ lines, face }: FittedText, { x, y, ink, anchor = 'start' }: TextPlace): Mark[] {
  return lines.map((text, place) => ({
    kind: 'text',
    x,
    y: y + face.size * (place * LINE_HEIGHT + BASELINE),
    text,
    ...face,
    anchor,
    ink,
  }));
}
