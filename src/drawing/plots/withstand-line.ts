import type { Mark } from '../display-list.ts';
import type { WithstandCurve } from '../trip-plot.ts';
import type { Point } from '../turn-point.ts';
import type { Scale } from './linear-scale.ts';

/**
 * From here on a withstand time is a lower bound: the adiabatic formula leaves out the heat the conductor gives away and
 * is held to 5 s (BS 7671, formula with table 43.1).
 */
export const LOWER_BOUND_FROM_S = 5;

export interface PlacedWithstand {
  points: Point[];
  /** Parts of the line, cut where it passes 5 s. */
  parts: { points: Point[]; isLowerBound: boolean }[];
}

/** A withstand line as it stands on paper: straight between its points, which on these axes keeps a power law. */
export function placedWithstand({ points }: WithstandCurve, x: Scale, y: Scale): PlacedWithstand {
  const parts: PlacedWithstand['parts'] = [];
  const limit = y(LOWER_BOUND_FROM_S);
  const placed = points.map(({ currentA, timeS }): Point => [x(currentA), y(timeS)]);
  for (const [place, from] of placed.entries()) {
    const to = placed[place + 1];
    if (to === undefined) continue;
    for (const piece of cutAt(limit, from, to)) {
      const last = parts.at(-1);
      if (last?.isLowerBound === piece.isLowerBound) last.points.push(piece.to);
      else parts.push({ points: [piece.from, piece.to], isLowerBound: piece.isLowerBound });
    }
  }
  return { points: placed, parts };
}

export function withstandMarks({ parts }: PlacedWithstand): Mark[] {
  return parts.map(({ points, isLowerBound }) => ({
    kind: 'line',
    points,
    stroke: { ink: 'ink', width: 1.6, join: 'round', ...(isLowerBound ? { dash: [5, 3.5] } : {}) },
  }));
}

interface Piece {
  from: Point;
  to: Point;
  isLowerBound: boolean;
}

/** Longer times stand higher, which is a smaller y. */
function cutAt(limit: number, from: Point, to: Point): Piece[] {
  const [above, below] = [from[1] < limit, to[1] < limit];
  if (above === below) return [{ from, to, isLowerBound: above }];
  const along = (limit - from[1]) / (to[1] - from[1]);
  const at: Point = [from[0] + (to[0] - from[0]) * along, limit];
  return [
    { from, to: at, isLowerBound: above },
    { from: at, to, isLowerBound: below },
  ];
}
