import type { DrawnCallout, PhotoFrame } from '../callouts.ts';
import type { Mark } from '../display-list.ts';
import type { Point } from '../turn-point.ts';
import { HALO_EACH_SIDE, haloedLine, LINE_WIDTH } from './haloed-line.ts';
import { shownPoints } from './shown-points.ts';

export const RING_RADIUS = 13;
const DOT_RADIUS = 4;
const NUMBER_SIZE = 15;
/** Shortest level piece between ring and elbow. */
const SHOULDER = 9;

/** A numbered leader line as on a technical drawing: dot, oblique line, level shoulder, number in a ring. */
export function leaderMarksOf(callout: DrawnCallout, frame: PhotoFrame): Mark[] {
  const [target, placed] = shownPoints(callout, frame);
  if (target === undefined) return [];
  const ring = placed ?? restingRing(target, frame);
  return [
    ...haloedLine(leaderPath(target, ring, frame.scale), frame.scale),
    ...dotMarks(target, frame.scale),
    ...ringMarks(ring, callout.number, frame.scale),
  ];
}

/**
 * From the target to the ring's edge. The oblique leg stands at 45° or steeper, the rest is level; where the target is
 * above or below the ring there is no room for a shoulder and the line is straight. Empty when the ring covers the target.
 */
export function leaderPath(target: Point, ring: Point, scale: number): Point[] {
  const radius = RING_RADIUS * scale;
  const across = target[0] - ring[0];
  const down = target[1] - ring[1];
  const distance = Math.hypot(across, down);
  if (distance <= radius) return [target, target];
  if (Math.abs(across) < radius + SHOULDER * scale) {
    return [target, [ring[0] + (across / distance) * radius, ring[1] + (down / distance) * radius]];
  }
  const side = Math.sign(across);
  const shoulder = Math.max(SHOULDER * scale, Math.abs(across) - radius - Math.abs(down));
  const edge: Point = [ring[0] + side * radius, ring[1]];
  const elbow: Point = [edge[0] + side * shoulder, ring[1]];
  return down === 0 ? [target, edge] : [target, elbow, edge];
}

/** Where a number stands until somebody moves it: up and away from the nearer side, always inside the photo. */
export function restingRing(target: Point, { widthPx, heightPx, scale }: PhotoFrame): Point {
  const room = (RING_RADIUS + 3) * scale;
  const reach = 64 * scale;
  const across = target[0] < widthPx / 2 ? reach : -reach;
  const up = target[1] > reach + room ? -reach : reach;
  return [within(target[0] + across, room, widthPx - room), within(target[1] + up, room, heightPx - room)];
}

function within(value: number, least: number, most: number): number {
  return Math.max(Math.min(value, most), Math.min(least, most));
}

function dotMarks([cx, cy]: Point, scale: number): Mark[] {
  const dot = (radius: number): { form: 'ellipse'; cx: number; cy: number; rx: number; ry: number } => ({
    form: 'ellipse',
    cx,
    cy,
    rx: radius * scale,
    ry: radius * scale,
  });
  return [
    { kind: 'shape', shape: dot(DOT_RADIUS + HALO_EACH_SIDE), fill: 'white' },
    { kind: 'shape', shape: dot(DOT_RADIUS), fill: 'black' },
  ];
}

function ringMarks([cx, cy]: Point, number: number | null, scale: number): Mark[] {
  const radius = RING_RADIUS * scale;
  const edge = (RING_RADIUS + LINE_WIDTH / 2 + HALO_EACH_SIDE) * scale;
  const marks: Mark[] = [
    { kind: 'shape', shape: { form: 'ellipse', cx, cy, rx: edge, ry: edge }, fill: 'white' },
    {
      kind: 'shape',
      shape: { form: 'ellipse', cx, cy, rx: radius, ry: radius },
      fill: 'white',
      stroke: { ink: 'black', width: LINE_WIDTH * scale },
    },
  ];
  if (number === null) return marks;
  const size = (number < 100 ? NUMBER_SIZE : NUMBER_SIZE * 0.8) * scale;
  // Figures of the face are 0.698 em high (OS/2 cap height), so half of that below the middle is their baseline.
  const y = cy + size * 0.349;
  marks.push({ kind: 'text', x: cx, y, text: String(number), size, weight: 600, anchor: 'middle', ink: 'black' });
  return marks;
}
