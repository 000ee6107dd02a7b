import { leaderPath, RING_RADIUS } from '../../drawing/callouts/leader.ts';
import { textMarksOf } from '../../drawing/callouts/words.ts';
import { type DrawnCallout, frameOf, type PhotoFrame } from '../../drawing/callouts.ts';
import { textWidth } from '../../drawing/text-width.ts';
import type { ImagePoint } from '../../schema/callout.ts';

type ShownPoint = [x: number, y: number];

/** Where a callout is taken hold of: at one of its points, or all of it. */
export type Grip = { kind: 'point'; place: number } | { kind: 'whole' };

/** Half of the 48 px that a finger needs; lines are forgiving, points more so. */
const POINT_REACH_PX = 24;
const LINE_REACH_PX = 18;

/** The callout under a finger: the nearest one within reach, of equals the one painted later. */
export function calloutAt<T extends DrawnCallout>(callouts: readonly T[], at: ShownPoint, frame: PhotoFrame): T | null {
  let nearest: { callout: T; distancePx: number } | null = null;
  for (const callout of callouts) {
    const distancePx = distanceToCalloutPx(callout, at, frame);
    if (distancePx <= LINE_REACH_PX && (nearest === null || distancePx <= nearest.distancePx)) {
      nearest = { callout, distancePx };
    }
  }
  return nearest?.callout ?? null;
}

/** How the chosen callout is gripped there, or null. A stroke has too many points to take them singly. */
export function gripAt(callout: DrawnCallout, at: ShownPoint, frame: PhotoFrame): Grip | null {
  const points = shown(callout.points, frame);
  if (callout.kind !== 'stroke') {
    const distances = points.map((point) => Math.hypot(point[0] - at[0], point[1] - at[1]));
    const least = Math.min(...distances);
    if (least <= POINT_REACH_PX) return { kind: 'point', place: distances.indexOf(least) };
  }
  return distanceToCalloutPx(callout, at, frame) <= LINE_REACH_PX ? { kind: 'whole' } : null;
}

export function distanceToCalloutPx(callout: DrawnCallout, at: ShownPoint, frame: PhotoFrame): number {
  const points = shown(callout.points, frame);
  const [first, second] = points;
  if (first === undefined) return Number.POSITIVE_INFINITY;
  switch (callout.kind) {
    case 'leader': {
      if (second === undefined) return distanceToLinePx(at, [first]);
      const toRing = Math.max(0, Math.hypot(at[0] - second[0], at[1] - second[1]) - RING_RADIUS * frame.scale);
      return Math.min(toRing, distanceToLinePx(at, leaderPath(first, second, frame.scale)));
    }
    case 'outline':
      return second === undefined ? Number.POSITIVE_INFINITY : distanceToLinePx(at, boxLine(first, second));
    case 'cover':
      return second === undefined ? Number.POSITIVE_INFINITY : distanceToBoxPx(at, first, second);
    case 'text':
      return distanceToWordsPx(callout, at, frame);
    default:
      return distanceToLinePx(at, points);
  }
}

function distanceToWordsPx(callout: DrawnCallout, at: ShownPoint, frame: PhotoFrame): number {
  const distances = textMarksOf(callout, frame).flatMap((mark) => {
    if (mark.kind !== 'text') return [];
    const right = mark.x + textWidth(mark.text, mark);
    return [distanceToBoxPx(at, [mark.x, mark.y - mark.size], [right, mark.y + mark.size * 0.3])];
  });
  return Math.min(Number.POSITIVE_INFINITY, ...distances);
}

function boxLine(a: ShownPoint, b: ShownPoint): ShownPoint[] {
  return [a, [b[0], a[1]], b, [a[0], b[1]], a];
}

/** 0 inside the box. */
function distanceToBoxPx(at: ShownPoint, a: ShownPoint, b: ShownPoint): number {
  const across = Math.max(Math.min(a[0], b[0]) - at[0], 0, at[0] - Math.max(a[0], b[0]));
  const down = Math.max(Math.min(a[1], b[1]) - at[1], 0, at[1] - Math.max(a[1], b[1]));
  return Math.hypot(across, down);
}

function distanceToLinePx(at: ShownPoint, points: readonly ShownPoint[]): number {
  const [first] = points;
  if (first === undefined) return Number.POSITIVE_INFINITY;
  const stretches = points.slice(1).map((to, place) => distanceToStretchPx(at, points[place] ?? first, to));
  return Math.min(Math.hypot(at[0] - first[0], at[1] - first[1]), ...stretches);
}

function distanceToStretchPx(at: ShownPoint, from: ShownPoint, to: ShownPoint): number {
  const across = to[0] - from[0];
  const down = to[1] - from[1];
  const squared = across ** 2 + down ** 2;
  const along = squared === 0 ? 0 : ((at[0] - from[0]) * across + (at[1] - from[1]) * down) / squared;
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(at[0] - from[0] - share * across, at[1] - from[1] - share * down);
}

function shown(points: readonly ImagePoint[], frame: PhotoFrame): ShownPoint[] {
  return points.map(([x, y]) => [x * frame.widthPx, y * frame.heightPx]);
}

/** The frame in which callouts are edited: lines keep their width however far the photo is magnified. */
export function editingFrame(
  shownPhoto: { widthPx: number; heightPx: number },
  whole: { widthPx: number; heightPx: number },
): PhotoFrame {
  return { ...shownPhoto, scale: Math.max(LEAST_SCALE, frameOf({ callouts: [], ...whole }).scale) };
}
/** Keeps the numbers in their rings at 13 px or more. */
const LEAST_SCALE = 0.9;
