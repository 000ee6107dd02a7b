import type { Mark, TextMark } from '../display-list.ts';
import { shortened } from '../text-shortened.ts';
import { type TextFace, textWidth } from '../text-width.ts';
import type { Point } from '../turn-point.ts';
import type { CrossedCells } from './crossed-cells.ts';
import { type Box, inside, type LabelRoom, textBox } from './label-room.ts';

export interface LabelInput {
  text: string;
  face: TextFace;
  /** What the label names: any one of these. */
  points: readonly Point[];
  /** Where it may stand. */
  panel: Box;
  room: LabelRoom;
  crossed: CrossedCells;
}

/** Free distance between the point and its label, so that a sign at the point stays clear. */
const NEAREST = 6;
/** From this distance on a thin line leads from the point to its label. */
const LED_FROM = 11;
const STEP_X = 6;
const STEP_Y = 4;
/** A label over a line is as bad as one this much farther away, per little square covered. Our choice. */
const CROSSING_COST = 5;
const WIDEST_FRAC = 0.6;

/** A name as near its point as it can stand without covering lines or other words; none if there is no room at all. */
export function labelAt(input: LabelInput): Mark[] {
  const { face, panel, room } = input;
  const text = shortened(input.text, face, (panel.right - panel.left) * WIDEST_FRAC);
  if (text === '') return [];
  const width = textWidth(text, face);
  const markAt = (x: number, y: number): TextMark => ({
    kind: 'text',
    x,
    y,
    text,
    ...face,
    anchor: 'start',
    ink: 'ink',
    halo: HALO,
  });
  const atOrigin = textBox(markAt(0, 0));
  let best: { x: number; y: number; box: Box; cost: number; distance: number; point: Point } | null = null;
  for (const [point, x, y] of places({ points: input.points, width, size: face.size, panel })) {
    const box = moved(atOrigin, x, y);
    const distance = distanceTo(box, point);
    if (distance < NEAREST || (best !== null && distance >= best.cost) || !inside(box, panel)) continue;
    const cost = distance + CROSSING_COST * input.crossed(box);
    if ((best === null || cost < best.cost) && room.fits(box)) best = { x, y, box, cost, distance, point };
  }
  if (best === null) return [];
  const mark = room.take(markAt(best.x, best.y));
  if (mark === null) return [];
  return best.distance < LED_FROM ? [mark] : [leader(best.point, best.box), mark];
}

const HALO = { ink: 'ground', width: 2.5 } as const;

/** Beginnings of baselines to try: for each point a grid over the panel that holds the four places right at the point. */
function* places({
  points,
  width,
  size,
  panel,
}: {
  points: readonly Point[];
  width: number;
  size: number;
  panel: Box;
}) {
  for (const point of points) {
    const beside = [point[1] + size * 0.28, point[1] - NEAREST - size * 0.23, point[1] + NEAREST + size * 0.79];
    const rows = [...beside, ...steps(panel.top + size * 0.78, panel.bottom - size * 0.22, STEP_Y)];
    const columns = [
      point[0] + NEAREST + 0.5,
      point[0] - NEAREST - 0.5 - width,
      point[0] - width / 2,
      ...steps(panel.left + 2, panel.right - width - 2, STEP_X),
    ];
    for (const y of rows) for (const x of columns) yield [point, x, y] as const;
  }
}

function* steps(from: number, to: number, step: number): Generator<number> {
  for (let value = from; value <= to; value += step) yield value;
}

function moved(box: Box, x: number, y: number): Box {
  return { left: box.left + x, right: box.right + x, top: box.top + y, bottom: box.bottom + y };
}

function distanceTo(box: Box, [x, y]: Point): number {
  return Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom));
}

/** From near the point to the nearest edge of the label. */
function leader([x, y]: Point, box: Box): Mark {
  const end: Point = [Math.min(Math.max(x, box.left), box.right), Math.min(Math.max(y, box.top + 1), box.bottom - 1)];
  const length = Math.hypot(end[0] - x, end[1] - y);
  const start: Point = [x + ((end[0] - x) / length) * NEAREST, y + ((end[1] - y) / length) * NEAREST];
  return { kind: 'line', points: [start, end], stroke: { ink: 'muted', width: 0.8 } };
}
