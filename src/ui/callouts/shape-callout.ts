import { restingRing } from '../../drawing/callouts/leader.ts';
import { frameOf } from '../../drawing/callouts.ts';
import { roundedPoint, simplifyStroke } from '../../drawing/simplify-stroke.ts';
import type { CalloutKind, ImagePoint } from '../../schema/callout.ts';

export interface PhotoSize {
  widthPx: number;
  heightPx: number;
}

/** Shorter marks are slips of the finger: our choice, half of what a fingertip covers. */
const SHORTEST_PX = 12;
const SHORTEST_STROKE_PX = 6;
/** How far a kept stroke may lie from what was drawn: our choice, less than the width of its line. */
const STROKE_TOLERANCE_PX = 1;

/**
 * The points of a callout drawn along a path, or null if it is too short for its kind. Leaders and words stand where the
 * finger was lifted; an arrow is pulled from its tail to its head. `shown` is the size at which the path was drawn,
 * `whole` the size at which the whole photo fits: the number keeps its distance there.
 */
export function pointsFromPath(
  kind: CalloutKind,
  path: readonly ImagePoint[],
  { shown, whole }: { shown: PhotoSize; whole: PhotoSize },
): ImagePoint[] | null {
  const first = path[0];
  const last = path.at(-1);
  if (first === undefined || last === undefined) return null;
  switch (kind) {
    case 'leader': {
      const target = roundedPoint(last);
      return [target, roundedPoint(ringFor(target, whole))];
    }
    case 'text':
      return [roundedPoint(last)];
    case 'arrow':
      return lengthPx(first, last, shown) < SHORTEST_PX ? null : [roundedPoint(last), roundedPoint(first)];
    case 'outline':
    case 'cover':
      return lengthPx(first, last, shown) < SHORTEST_PX ? null : [roundedPoint(first), roundedPoint(last)];
    case 'stroke': {
      const reach = Math.max(...path.map((point) => lengthPx(first, point, shown)));
      if (reach < SHORTEST_STROKE_PX) return null;
      return simplifyStroke({ points: path, ...shown, tolerancePx: STROKE_TOLERANCE_PX });
    }
  }
}

/** What is being drawn, before it is let go: as it will be, but a stroke is shown as it comes. */
export function draftFromPath(
  kind: CalloutKind,
  path: readonly ImagePoint[],
  sizes: { shown: PhotoSize; whole: PhotoSize },
): ImagePoint[] | null {
  return kind === 'stroke' ? [...path] : pointsFromPath(kind, path, sizes);
}

export function movedPoint(points: readonly ImagePoint[], place: number, to: ImagePoint): ImagePoint[] {
  return points.map((point, at) => (at === place ? roundedPoint(to) : point));
}

/** Moves all points alike, and stops where one of them would leave the picture. */
export function movedWhole(points: readonly ImagePoint[], by: ImagePoint): ImagePoint[] {
  const held = ([0, 1] as const).map((axis) => {
    const least = Math.min(...points.map((point) => point[axis]));
    const most = Math.max(...points.map((point) => point[axis]));
    return Math.min(1 - most, Math.max(-least, by[axis]));
  });
  return points.map(([x, y]) => roundedPoint([x + (held[0] ?? 0), y + (held[1] ?? 0)]));
}

function ringFor([x, y]: ImagePoint, whole: PhotoSize): ImagePoint {
  const frame = frameOf({ callouts: [], ...whole });
  const [ringX, ringY] = restingRing([x * whole.widthPx, y * whole.heightPx], frame);
  return [ringX / whole.widthPx, ringY / whole.heightPx];
}

function lengthPx(from: ImagePoint, to: ImagePoint, { widthPx, heightPx }: PhotoSize): number {
  return Math.hypot((from[0] - to[0]) * widthPx, (from[1] - to[1]) * heightPx);
}
