import type { Ink, Mark, PathStep, ShapeMark, Stroke, TextMark } from '../../../drawing/display-list.ts';

/** Short spellings of the marks that the demo pictures are made of. */
export interface Look {
  fill?: Ink;
  stroke?: Stroke;
}

/** Every picture is as wide and as high as this. */
export const WIDTH = 1600;
export const HEIGHT = 1200;

/** The line round a thing, and the finer one inside it. */
export const OUTLINE: Stroke = { ink: 'ink', width: 5, join: 'round', cap: 'round' };
export const FINE: Stroke = { ink: 'ink', width: 3, join: 'round', cap: 'round' };

export type Box = readonly [x: number, y: number, width: number, height: number];

export function box([x, y, width, height]: Box, look: Look, radius = 0): ShapeMark {
  return { kind: 'shape', shape: { form: 'box', x, y, width, height, radius }, ...look };
}

export function disc([cx, cy]: readonly [number, number], r: number, look: Look): ShapeMark {
  return oval([cx, cy, r, r], look);
}

export function oval([cx, cy, rx, ry]: readonly [number, number, number, number], look: Look): ShapeMark {
  return { kind: 'shape', shape: { form: 'ellipse', cx, cy, rx, ry }, ...look };
}

/** `ways`: x and y of each point in turn, x1, y1, x2, y2 … */
export function line(ways: readonly number[], stroke: Stroke = FINE): Mark {
  return { kind: 'line', points: pairs(ways), stroke };
}

/** A closed outline with straight sides, its corners as for `line`. */
export function polygon(ways: readonly number[], look: Look): Mark {
  const steps = pairs(ways).map(([x, y], place): PathStep => [place === 0 ? 'M' : 'L', x, y]);
  return { kind: 'path', steps: [...steps, ['Z']], ...look };
}

function pairs(ways: readonly number[]): [x: number, y: number][] {
  return Array.from({ length: ways.length / 2 }, (_, place) => [ways[2 * place] ?? 0, ways[2 * place + 1] ?? 0]);
}

export function path(steps: readonly PathStep[], look: Look): Mark {
  return { kind: 'path', steps: [...steps], ...look };
}

export function print(at: readonly [number, number], text: string, look: Partial<TextMark> = {}): Mark {
  const [x, y] = at;
  return { kind: 'text', x, y, text, size: 34, weight: 500, anchor: 'middle', ink: 'ink', ...look };
}

/** A wire or lead along a path: dark edge, coloured body, a lighter line along its upper side. */
export function lead(steps: readonly PathStep[], { ink, width }: { ink: Ink; width: number }): Mark[] {
  const edge = Math.max(4, Math.min(10, width * 0.14));
  const round = { cap: 'round', join: 'round' } as const;
  return [
    path(steps, { stroke: { ink: 'ink', width: width + edge, ...round } }),
    path(steps, { stroke: { ink, width: width - 2, ...round } }),
    path(shifted(steps, -width * 0.22), { stroke: { ink: 'line', width: width * 0.18, ...round } }),
  ];
}

/** Each point moved up and left by as much, for a line of light along a lead. */
function shifted(steps: readonly PathStep[], by: number): PathStep[] {
  const move = (step: PathStep): PathStep =>
    step.length === 1 ? step : (step.map((part) => (typeof part === 'number' ? part + by : part)) as PathStep);
  return steps.map(move);
}
