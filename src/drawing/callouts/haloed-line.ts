import type { LineMark, Mark, ShapeMark, Stroke } from '../display-list.ts';

/** Width of a callout's line and of the white edge on each side of it, at scale 1. */
export const LINE_WIDTH = 2.4;
export const HALO_EACH_SIDE = 1.6;

/** A black line over a wider white one: readable on metal and on foam. */
export function haloedLine(points: LineMark['points'], scale: number): Mark[] {
  return [
    { kind: 'line', points, stroke: haloStroke(scale) },
    { kind: 'line', points, stroke: inkStroke(scale) },
  ];
}

export function haloedShape(shape: ShapeMark['shape'], scale: number): Mark[] {
  return [
    { kind: 'shape', shape, stroke: haloStroke(scale) },
    { kind: 'shape', shape, stroke: inkStroke(scale) },
  ];
}

function inkStroke(scale: number): Stroke {
  return { ink: 'black', width: LINE_WIDTH * scale, cap: 'round', join: 'round' };
}

function haloStroke(scale: number): Stroke {
  return { ink: 'white', width: (LINE_WIDTH + 2 * HALO_EACH_SIDE) * scale, cap: 'round', join: 'round' };
}
