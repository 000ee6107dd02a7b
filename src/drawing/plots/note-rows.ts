import type { Mark } from '../display-list.ts';
import { textLines } from '../text-lines.ts';
import { SMALL } from './plot-look.ts';

const ROW_HEIGHT = 16;

/** A sentence below a plot, in as many rows as it needs. */
export function noteRows(text: string, width: number): { height: number; marksAt: (top: number) => Mark[] } {
  const lines = textLines(text, SMALL, width);
  return {
    height: lines.length * ROW_HEIGHT,
    marksAt: (top) =>
      lines.map((line, place) => ({
        kind: 'text',
        x: 0,
        y: top + place * ROW_HEIGHT + 12,
        text: line,
        ...SMALL,
        anchor: 'start',
        ink: 'muted',
      })),
  };
}
