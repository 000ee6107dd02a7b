import { roundedPoint } from '../../drawing/simplify-stroke.ts';
import type { ImagePoint } from '../../schema/callout.ts';
import type { GestureEffect } from '../callouts/gesture.ts';
import type { StagePoint } from '../callouts/view.ts';

/** Four corners of the card, then the two ends of a distance. */
export const RULER_POINTS = 6;

/** A point under the finger: which one, where it is, and how far off the finger it was taken. */
export interface HeldPoint {
  place: number;
  at: ImagePoint;
  offPx: StagePoint;
}

interface RulerStage {
  points: readonly ImagePoint[];
  toImage: (at: StagePoint) => ImagePoint;
  toStage: (point: ImagePoint) => StagePoint;
}

/** Half of the 48 px that a finger needs. */
const REACH_PX = 24;
/** While another point is still to be set, only a press right on a set one takes hold of it: ends of a thin lead lie close. */
const CLOSE_REACH_PX = 14;

/** What a finger on the stage does to the point it holds; `set` once it is lifted. */
export function rulerGesture(
  held: HeldPoint | null,
  effect: GestureEffect,
  stage: RulerStage,
): { held: HeldPoint | null; set: { place: number; at: ImagePoint } | null } {
  switch (effect.kind) {
    case 'press':
      return { held: taken(effect.at, stage), set: null };
    case 'drag': {
      const at = effect.path.at(-1);
      return { held: held && at ? moved(held, at, stage) : held, set: null };
    }
    case 'release': {
      const at = effect.path.at(-1);
      const last = held && at ? moved(held, at, stage) : null;
      return { held: null, set: last && { place: last.place, at: last.at } };
    }
    case 'abandon':
      return { held: null, set: null };
    default:
      return { held, set: null };
  }
}

/** The nearest point within reach; else the next one that is still to be set, right under the finger. */
function taken(at: StagePoint, { points, toImage, toStage }: RulerStage): HeldPoint | null {
  const all = points.map((point, place) => {
    const [x, y] = toStage(point);
    return { place, offPx: [x - at[0], y - at[1]] as StagePoint, distancePx: Math.hypot(x - at[0], y - at[1]) };
  });
  const isWhole = points.length >= RULER_POINTS;
  const nearest = all.toSorted((a, b) => a.distancePx - b.distancePx)[0];
  if (nearest !== undefined && nearest.distancePx <= (isWhole ? REACH_PX : CLOSE_REACH_PX)) {
    return { place: nearest.place, at: points[nearest.place] ?? toImage(at), offPx: nearest.offPx };
  }
  return isWhole ? null : { place: points.length, at: roundedPoint(toImage(at)), offPx: [0, 0] };
}

/** A finger rarely lands on the point itself, so it carries the point along at the distance at which it took it. */
function moved({ place, offPx }: HeldPoint, at: StagePoint, { toImage }: RulerStage): HeldPoint {
  return { place, offPx, at: roundedPoint(toImage([at[0] + offPx[0], at[1] + offPx[1]])) };
}

/** The points with one of them set or moved. */
export function withPoint(points: readonly ImagePoint[], place: number, at: ImagePoint): ImagePoint[] {
  return place >= points.length ? [...points, at] : points.map((point, index) => (index === place ? at : point));
}

/** The keys: a crosshair that sets the next point, or the point in hand once all are set. */
export interface RulerKeys {
  at: ImagePoint;
  place: number;
}

/** Enter: sets the point at the crosshair if it is a new one, and takes the next in hand. */
export function enterPoint(
  { at, place }: RulerKeys,
  points: readonly ImagePoint[],
): { keys: RulerKeys; points: ImagePoint[] | null } {
  const isNew = place >= points.length;
  const next = isNew ? [...points, at] : points;
  const after = isNew && next.length < RULER_POINTS ? next.length : (place + 1) % next.length;
  return { keys: { place: after, at: next[after] ?? at }, points: isNew ? [...next] : null };
}
