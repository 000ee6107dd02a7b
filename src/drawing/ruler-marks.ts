import type { ImagePoint } from '../schema/callout.ts';
import { haloedLine } from './callouts/haloed-line.ts';
import { frameOf, type PhotoFrame } from './callouts.ts';
import type { Drawing, Mark } from './display-list.ts';
import { textWidth } from './text-width.ts';
import type { Point } from './turn-point.ts';

/** A photo ruler as far as its points are set. */
export interface DrawnRuler {
  /** Of the card, in order round it; from four on the outline is closed and its first side the long one. */
  corners: readonly ImagePoint[];
  ends: readonly ImagePoint[];
  /** The long side's length and the distance, as written beside them; empty for none. */
  cardText: string;
  text: string;
}

interface RulersInput {
  rulers: readonly DrawnRuler[];
  widthPx: number;
  heightPx: number;
  /** As for callouts. */
  scale?: number;
  alt?: string;
}

const FACE = { size: 16, weight: 600 } as const;
const HALO_WIDTH = 4;
/** Half the length of the strokes across the ends of a distance. */
const END_STROKE = 9;
const AWAY = 14;

/** Cards and distances on a photo, in black and white as callouts are. */
export function rulerMarks({ rulers, ...input }: RulersInput): Drawing {
  const frame = frameOf({ ...input, callouts: [] });
  const marks = rulers.flatMap((ruler) => [...cardMarks(ruler, frame), ...distanceMarks(ruler, frame)]);
  return { width: input.widthPx, height: input.heightPx, alt: input.alt ?? '', marks };
}

function cardMarks({ corners, cardText }: DrawnRuler, frame: PhotoFrame): Mark[] {
  const points = corners.map((corner) => shown(corner, frame));
  const [first, second] = points;
  if (first === undefined || second === undefined) return [];
  const isWhole = points.length === 4;
  const outline = haloedLine(isWhole ? [...points, first] : points, frame.scale * 0.7);
  if (!isWhole || cardText === '') return outline;
  const middle = middleOf(points);
  return [...outline, words(cardText, pushed(midway(first, second), middle, AWAY * frame.scale), frame)];
}

function distanceMarks({ corners, ends, text }: DrawnRuler, frame: PhotoFrame): Mark[] {
  const [from, to] = ends.map((end) => shown(end, frame));
  if (from === undefined || to === undefined) return [];
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length === 0) return [];
  const across: Point = [
    (-(to[1] - from[1]) / length) * END_STROKE * frame.scale,
    ((to[0] - from[0]) / length) * END_STROKE * frame.scale,
  ];
  const stroke = (end: Point) =>
    haloedLine(
      [
        [end[0] - across[0], end[1] - across[1]],
        [end[0] + across[0], end[1] + across[1]],
      ],
      frame.scale,
    );
  const line = [...haloedLine([from, to], frame.scale), ...stroke(from), ...stroke(to)];
  if (text === '') return line;
  return [
    ...line,
    words(text, besideLine({ from, to, corners: corners.map((corner) => shown(corner, frame)), text }, frame), frame),
  ];
}

interface LabelledLine {
  from: Point;
  to: Point;
  corners: readonly Point[];
  text: string;
}

/** Middle of words that lie beside a line, clear of it whichever way it runs, on the side away from the card. */
function besideLine({ from, to, corners, text }: LabelledLine, { scale, widthPx }: PhotoFrame): Point {
  const size = FACE.size * scale;
  const half = { across: textWidth(text, { ...FACE, size }) / 2, down: size / 2 };
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const normal: Point = [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
  const middle = midway(from, to);
  const card = corners.length > 0 ? middleOf(corners) : middle;
  const isTowardsCard = (card[0] - middle[0]) * normal[0] + (card[1] - middle[1]) * normal[1] > 0;
  const reach = Math.abs(normal[0]) * half.across + Math.abs(normal[1]) * half.down + (END_STROKE + 6) * scale;
  const away = isTowardsCard ? -reach : reach;
  const x = middle[0] + normal[0] * away;
  const edge = half.across + HALO_WIDTH * scale;
  return [Math.min(widthPx - edge, Math.max(edge, x)), middle[1] + normal[1] * away];
}

/** Words with their middle at a point, pushed back inside the photo at its upper and lower edge. */
function words(text: string, [x, y]: Point, { scale, heightPx }: PhotoFrame): Mark {
  const size = FACE.size * scale;
  const baseline = Math.min(heightPx - HALO_WIDTH * scale, Math.max(size + HALO_WIDTH * scale, y + size * 0.35));
  const halo = { ink: 'white', width: HALO_WIDTH * scale } as const;
  return { kind: 'text', x, y: baseline, text, ...FACE, size, anchor: 'middle', ink: 'black', halo };
}

function pushed(point: Point, away: Point, by: number): Point {
  const distance = Math.hypot(point[0] - away[0], point[1] - away[1]) || 1;
  return [point[0] + ((point[0] - away[0]) / distance) * by, point[1] + ((point[1] - away[1]) / distance) * by];
}

function midway(a: Point, b: Point): Point {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

function middleOf(points: readonly Point[]): Point {
  const sum = points.reduce<Point>(([x, y], point) => [x + point[0], y + point[1]], [0, 0]);
  return [sum[0] / points.length, sum[1] / points.length];
}

function shown([x, y]: ImagePoint, { widthPx, heightPx }: PhotoFrame): Point {
  return [x * widthPx, y * heightPx];
}
