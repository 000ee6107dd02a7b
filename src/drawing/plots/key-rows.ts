import type { Mark } from '../display-list.ts';
import { shortened } from '../text-shortened.ts';
import { textWidth } from '../text-width.ts';
import { SMALL } from './plot-look.ts';

export interface KeyEntry {
  /** The sign about the point (0, 0), moved there by the caller. */
  sign: (x: number, y: number) => Mark[];
  text: string;
}

const ROW_HEIGHT = 18;
const SIGN_WIDTH = 18;
const GAP = 14;

/** Signs with their words in rows as wide as the drawing. No box around them. */
export function keyRows(
  entries: readonly KeyEntry[],
  width: number,
): { height: number; marksAt: (top: number) => Mark[] } {
  let x = 0;
  let row = 0;
  const placed = entries.map((entry) => {
    const text = shortened(entry.text, SMALL, width - SIGN_WIDTH);
    const needed = SIGN_WIDTH + textWidth(text, SMALL);
    if (x > 0 && x + needed > width) {
      x = 0;
      row += 1;
    }
    const place = { sign: entry.sign, text, x, row };
    x += needed + GAP;
    return place;
  });
  return {
    height: entries.length === 0 ? 0 : (row + 1) * ROW_HEIGHT,
    marksAt: (top) =>
      placed.flatMap(({ sign, text, x: left, row: down }) => {
        const middle = top + down * ROW_HEIGHT + ROW_HEIGHT / 2;
        const words: Mark = {
          kind: 'text',
          x: left + SIGN_WIDTH,
          y: middle + SMALL.size * 0.34,
          text,
          ...SMALL,
          anchor: 'start',
          ink: 'muted',
        };
        return [...sign(left + 7, middle), words];
      }),
  };
}
