import type { Mark } from '../display-list.ts';

/** Two short slanting strokes through a level line: a piece of the scale is left out here. */
export function axisBreak(x: number, y: number): Mark[] {
  const slant = (shift: number, ink: 'ink' | 'ground', width: number): Mark => ({
    kind: 'line',
    points: [
      [x + shift - 2, y + 5],
      [x + shift + 2, y - 5],
    ],
    stroke: { ink, width },
  });
  return [slant(0, 'ground', 4), slant(-2, 'ink', 1.2), slant(2, 'ink', 1.2)];
}

/** A gap cut slanting through a bar, for the same reason. */
export function barBreak(x: number, middle: number, height: number): Mark {
  const half = height / 2 + 1;
  return {
    kind: 'line',
    points: [
      [x - half * 0.4, middle + half],
      [x + half * 0.4, middle - half],
    ],
    stroke: { ink: 'ground', width: 2.4 },
  };
}
