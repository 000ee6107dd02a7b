import type { Mark, Stroke } from '../display-list.ts';

const EDGE: Stroke = { ink: 'ink', width: 1.7, cap: 'round', join: 'round' };
const RADIUS = 4;
/** From the middle of the mark to the arrow's tip. */
export const ARROW_REACH = 14;

/** Opened: a filled dot. Held without opening: an open ring with an arrow up, for it would have held longer. */
export function tripSign(opened: boolean, x: number, y: number): Mark[] {
  const shape = { form: 'ellipse', cx: x, cy: y, rx: RADIUS, ry: RADIUS } as const;
  if (opened) return [{ kind: 'shape', shape, fill: 'ink', stroke: { ink: 'ground', width: 1.5 } }];
  return [...arrow(x, y, -1), { kind: 'shape', shape, fill: 'ground', stroke: EDGE }];
}

/** Opened at once: the dot at the foot of the panel with an arrow down, for a time of 0 has no place by decades. */
export function tripAtOnceSign(opened: boolean, x: number, y: number): Mark[] {
  return [...arrow(x, y, 1), ...tripSign(opened, x, y)];
}

function arrow(x: number, y: number, way: 1 | -1): Mark[] {
  const tip = y + way * ARROW_REACH;
  const line = (points: [number, number][]): Mark => ({ kind: 'line', points, stroke: EDGE });
  return [
    line([
      [x, y + way * RADIUS],
      [x, tip],
    ]),
    line([
      [x - 3, tip - way * 3.6],
      [x, tip],
      [x + 3, tip - way * 3.6],
    ]),
  ];
}
