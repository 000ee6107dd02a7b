import type { Mark, PathStep, Stroke } from '../display-list.ts';
import type { Point } from '../turn-point.ts';

const EDGE: Stroke = { ink: 'ink', width: 1.5, join: 'round' };
const HALF = 4;

/** Sign of the n-th pack: eight shapes that are told apart in ink alone, then they come again. */
export function packSign(place: number, [x, y]: Point): Mark[] {
  const filled = place % 2 === 0;
  const look = filled ? { fill: 'ink' as const } : { stroke: EDGE, fill: 'ground' as const };
  const outline = OUTLINES[place % OUTLINES.length];
  if (outline === undefined) {
    return [{ kind: 'shape', shape: { form: 'ellipse', cx: x, cy: y, rx: HALF, ry: HALF }, ...look }];
  }
  const steps = outline.map(([dx, dy], at): PathStep => [at === 0 ? 'M' : 'L', x + dx * HALF, y + dy * HALF]);
  return [{ kind: 'path', steps: [...steps, ['Z']], ...look }];
}

const SQUARE: Point[] = [
  [-0.9, -0.9],
  [0.9, -0.9],
  [0.9, 0.9],
  [-0.9, 0.9],
];
const UP: Point[] = [
  [0, -1.15],
  [1.1, 0.85],
  [-1.1, 0.85],
];
const DOWN: Point[] = [
  [-1.1, -0.85],
  [1.1, -0.85],
  [0, 1.15],
];
const DIAMOND: Point[] = [
  [0, -1.25],
  [1.25, 0],
  [0, 1.25],
  [-1.25, 0],
];

/** By place; undefined is a circle. Neighbours differ in shape and in being filled or hollow. */
const OUTLINES: readonly (readonly Point[] | undefined)[] = [
  undefined,
  SQUARE,
  UP,
  DIAMOND,
  SQUARE,
  undefined,
  DIAMOND,
  DOWN,
];
