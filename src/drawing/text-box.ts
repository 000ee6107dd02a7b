import type { TextMark } from './display-list.ts';
import { textWidth } from './text-width.ts';

/** Reach of the letters above and below the baseline, in sizes: accented capitals and descenders of the face. */
const ASCENT = 0.96;
const DESCENT = 0.26;

/** The box that a text mark takes: a line of the face in width, from accent to descender in height. */
export function textBox(mark: Pick<TextMark, 'x' | 'y' | 'text' | 'size' | 'weight' | 'anchor'>) {
  const width = textWidth(mark.text, mark);
  const shift = mark.anchor === 'start' ? 0 : mark.anchor === 'middle' ? width / 2 : width;
  return {
    x: mark.x - shift,
    y: mark.y - ASCENT * mark.size,
    width,
    height: (ASCENT + DESCENT) * mark.size,
  };
}
