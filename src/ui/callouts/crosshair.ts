import { roundedPoint } from '../../drawing/simplify-stroke.ts';
import type { CalloutKind, ImagePoint } from '../../schema/callout.ts';

/** Drawing without a pointer: a crosshair that the arrow keys move, and the points set so far. */
export interface Crosshair {
  at: ImagePoint;
  set: ImagePoint[];
}

/** Shares of the photo: our choice, 100 and 20 steps across it at zoom 1. */
const STEP = 0.01;
const LARGE_STEP = 0.05;

const DIRECTIONS: Readonly<Record<string, ImagePoint>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** How far an arrow key moves on the picture, or null for any other key. Magnified, steps are finer. */
export function keyStep(key: string, { large, zoom }: { large: boolean; zoom: number }): ImagePoint | null {
  const direction = DIRECTIONS[key];
  if (direction === undefined) return null;
  const step = (large ? LARGE_STEP : STEP) / zoom;
  return [direction[0] * step, direction[1] * step];
}

export function movedCrosshair(crosshair: Crosshair, by: ImagePoint): Crosshair {
  return { ...crosshair, at: roundedPoint([crosshair.at[0] + by[0], crosshair.at[1] + by[1]]) };
}

/**
 * Sets a point. The path is whole after one point for a leader or words, after two for an arrow or a box; a stroke takes
 * points until one is set twice in the same place.
 */
export function setPoint(
  kind: CalloutKind,
  { at, set }: Crosshair,
): { crosshair: Crosshair; path: ImagePoint[] | null } {
  const last = set.at(-1);
  const again = last !== undefined && last[0] === at[0] && last[1] === at[1];
  const path = again ? set : [...set, at];
  const whole = kind === 'stroke' ? again && path.length > 1 : path.length >= (POINTS_NEEDED[kind] ?? 2);
  return whole ? { crosshair: { at, set: [] }, path } : { crosshair: { at, set: path }, path: null };
}
const POINTS_NEEDED: Readonly<Partial<Record<CalloutKind, number>>> = { leader: 1, text: 1 };
