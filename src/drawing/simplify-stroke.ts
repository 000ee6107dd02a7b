import { type ImagePoint, MAX_CALLOUT_POINTS } from '../schema/callout.ts';

export interface StrokeInput {
  points: readonly ImagePoint[];
  /** Size at which it was drawn: the tolerance is a distance the eye sees. */
  widthPx: number;
  heightPx: number;
  tolerancePx: number;
}

/** Four decimals are 0.4 px of the largest photo kept, 4096 px. */
const DECIMALS = 10_000;

/**
 * A pen's path with the points that do not matter left out.
 *
 * Shape   n points in, at most 64 out, the first and the last among them; image coordinates to 4 decimals.
 * Error   no point left out is further than the tolerance from the line kept; where that needs more than 64 points the
 *         tolerance is doubled until it does not.
 * Source  Ramer (1972), Douglas & Peucker (1973)
 * Check   tests/drawing/simplify-stroke.test.ts
 */
export function simplifyStroke({ points, widthPx, heightPx, tolerancePx }: StrokeInput): ImagePoint[] {
  if (!(tolerancePx > 0)) throw new RangeError(`simplifyStroke: tolerance must be above 0 px, got ${tolerancePx}`);
  const shown = points.map(([x, y]): ImagePoint => [x * widthPx, y * heightPx]);
  let tolerance = tolerancePx;
  let kept = keptPlaces(shown, tolerance);
  while (kept.length > MAX_CALLOUT_POINTS) {
    tolerance *= 2;
    kept = keptPlaces(shown, tolerance);
  }
  return kept.flatMap((place) => {
    const point = points[place];
    return point === undefined ? [] : [roundedPoint(point)];
  });
}

/** Inside the picture and to the four decimals that are stored. */
export function roundedPoint([x, y]: ImagePoint): ImagePoint {
  return [roundedCoordinate(x), roundedCoordinate(y)];
}

function roundedCoordinate(value: number): number {
  return Math.min(1, Math.max(0, Math.round(value * DECIMALS) / DECIMALS));
}

function keptPlaces(shown: ImagePoint[], tolerancePx: number): number[] {
  const last = shown.length - 1;
  if (last < 1) return shown.map((_, place) => place);
  const kept = new Set([0, last]);
  // A list of open stretches instead of recursion: a slow stroke has thousands of points.
  const open: [number, number][] = [[0, last]];
  for (let stretch = open.pop(); stretch !== undefined; stretch = open.pop()) {
    const [from, to] = stretch;
    const furthest = furthestPlace(shown, from, to);
    if (furthest === null || furthest.distancePx <= tolerancePx) continue;
    kept.add(furthest.place);
    open.push([from, furthest.place], [furthest.place, to]);
  }
  return [...kept].sort((a, b) => a - b);
}

function furthestPlace(shown: ImagePoint[], from: number, to: number): { place: number; distancePx: number } | null {
  const start = shown[from];
  const end = shown[to];
  if (start === undefined || end === undefined) return null;
  let furthest: { place: number; distancePx: number } | null = null;
  for (let place = from + 1; place < to; place++) {
    const point = shown[place];
    if (point === undefined) continue;
    const distancePx = distanceToStretch(point, start, end);
    if (furthest === null || distancePx > furthest.distancePx) furthest = { place, distancePx };
  }
  return furthest;
}

/** Distance to the stretch itself, not to the endless line: a stroke may turn back on itself. */
function distanceToStretch(point: ImagePoint, start: ImagePoint, end: ImagePoint): number {
  const across = end[0] - start[0];
  const down = end[1] - start[1];
  const squared = across ** 2 + down ** 2;
  const along = squared === 0 ? 0 : ((point[0] - start[0]) * across + (point[1] - start[1]) * down) / squared;
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(point[0] - start[0] - share * across, point[1] - start[1] - share * down);
}
