import type { Point } from '../turn-point.ts';

export interface CornerBox {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** The upright box between two opposite corners, in whichever order they were drawn; null without two points. */
export function cornerBox([first, second]: Point[]): CornerBox | null {
  if (first === undefined || second === undefined) return null;
  return {
    x: Math.min(first[0], second[0]),
    y: Math.min(first[1], second[1]),
    width: Math.abs(first[0] - second[0]),
    height: Math.abs(first[1] - second[1]),
  };
}
