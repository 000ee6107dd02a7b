import { textWidth } from '../text-width.ts';
import { FIGURE_GAP } from './axis-marks.ts';
import { FIGURE } from './plot-look.ts';

/** Most of the width that figures beside an upright axis may take; longer ones are shortened. Our choice. */
const MOST_FRAC = 0.3;

/** Room left of an upright axis for the widest of its figures. */
export function leftMargin(figures: readonly string[], width: number): number {
  const widest = Math.max(0, ...figures.map((text) => textWidth(text, FIGURE)));
  return Math.min(widest + FIGURE_GAP + 1, width * MOST_FRAC);
}
