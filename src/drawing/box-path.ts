import type { PathStep } from './display-list.ts';

/** Share of the radius at which a cubic's handles stand so that four of them look like a circle: 4/3·(√2 − 1). */
export const QUARTER_ARC_HANDLE_FRAC = (4 / 3) * (Math.SQRT2 - 1);

export interface RoundedBox {
  x: number;
  y: number;
  width: number;
  height: number;
  radius: number;
}

/** A box with rounded corners as a path, clockwise from the end of its top left corner. */
export function boxPath({ x, y, width, height, radius }: RoundedBox): PathStep[] {
  const r = Math.max(0, Math.min(radius, width / 2, height / 2));
  const right = x + width;
  const bottom = y + height;
  const rest = r * (1 - QUARTER_ARC_HANDLE_FRAC);
  if (r === 0) return [['M', x, y], ['L', right, y], ['L', right, bottom], ['L', x, bottom], ['Z']];
  return [
    ['M', x + r, y],
    ['L', right - r, y],
    ['C', right - rest, y, right, y + rest, right, y + r],
    ['L', right, bottom - r],
    ['C', right, bottom - rest, right - rest, bottom, right - r, bottom],
    ['L', x + r, bottom],
    ['C', x + rest, bottom, x, bottom - rest, x, bottom - r],
    ['L', x, y + r],
    ['C', x, y + rest, x + rest, y, x + r, y],
    ['Z'],
  ];
}
