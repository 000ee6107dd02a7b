import type { Point } from '../turn-point.ts';
import type { Box } from './label-room.ts';

/** Side of the little squares in which lines are counted. */
const SIDE = 3;

/** How many little squares inside a box are crossed by the lines: what a label would cover. */
export type CrossedCells = (box: Box) => number;

/** Counts once which squares the lines cross, so that asking about a box costs four look-ups (a summed-area table). */
export function crossedCells(lines: readonly (readonly Point[])[], bounds: Box): CrossedCells {
  const columns = Math.ceil((bounds.right - bounds.left) / SIDE) + 1;
  const rows = Math.ceil((bounds.bottom - bounds.top) / SIDE) + 1;
  const column = (x: number): number => within(Math.floor((x - bounds.left) / SIDE), columns);
  const row = (y: number): number => within(Math.floor((y - bounds.top) / SIDE), rows);
  const crossed = new Set<number>();
  for (const line of lines) {
    for (const [x, y] of dense(line)) crossed.add(row(y) * columns + column(x));
  }
  const sums = new Float64Array((columns + 1) * (rows + 1));
  const at = (r: number, c: number): number => sums[r * (columns + 1) + c] ?? 0;
  for (let r = 1; r <= rows; r += 1) {
    for (let c = 1; c <= columns; c += 1) {
      const here = crossed.has((r - 1) * columns + c - 1) ? 1 : 0;
      sums[r * (columns + 1) + c] = here + at(r - 1, c) + at(r, c - 1) - at(r - 1, c - 1);
    }
  }
  return (box) => {
    const [top, bottom] = [row(box.top), row(box.bottom) + 1];
    const [left, right] = [column(box.left), column(box.right) + 1];
    return at(bottom, right) - at(top, right) - at(bottom, left) + at(top, left);
  };
}

/** Points along a line no farther apart than half a square. */
function* dense(line: readonly Point[]): Generator<Point> {
  for (const [place, [x, y]] of line.entries()) {
    yield [x, y];
    const next = line[place + 1];
    if (next === undefined) continue;
    const steps = Math.ceil(Math.hypot(next[0] - x, next[1] - y) / (SIDE / 2));
    for (let step = 1; step < steps; step += 1) {
      yield [x + ((next[0] - x) * step) / steps, y + ((next[1] - y) * step) / steps];
    }
  }
}

function within(place: number, count: number): number {
  return Math.min(Math.max(place, 0), count - 1);
}
