import { boxPath } from './box-path.ts';
import type { Drawing, Mark, Stroke } from './display-list.ts';

const THIN: Stroke = { ink: 'ink', width: 1.7, cap: 'round', join: 'round' };
const BOX = 24;

const ICONS = {
  back: [line([14.5, 5], [7.5, 12], [14.5, 19])],
  onward: [line([9.5, 5], [16.5, 12], [9.5, 19])],
  plus: [line([12, 5], [12, 19]), line([5, 12], [19, 12])],
  check: [line([5, 12.6], [10, 17.5], [19.5, 6.5])],
  cross: [line([6, 6], [18, 18]), line([18, 6], [6, 18])],
  undo: [
    line([8.5, 4.5], [4.5, 8.5], [8.5, 12.5]),
    curve([
      ['M', 4.5, 8.5],
      ['L', 14, 8.5],
      ['C', 17.3, 8.5, 19.5, 10.7, 19.5, 13.6],
      ['C', 19.5, 16.7, 17.3, 19, 14, 19],
      ['L', 9, 19],
    ]),
  ],
  redo: [
    line([15.5, 4.5], [19.5, 8.5], [15.5, 12.5]),
    curve([
      ['M', 19.5, 8.5],
      ['L', 10, 8.5],
      ['C', 6.7, 8.5, 4.5, 10.7, 4.5, 13.6],
      ['C', 4.5, 16.7, 6.7, 19, 10, 19],
      ['L', 15, 19],
    ]),
  ],
  photo: [
    curve(boxPath({ x: 3.5, y: 7, width: 17, height: 12, radius: 2 })),
    line([8, 7], [9.4, 4.5], [14.6, 4.5], [16, 7]),
    ellipse(12, 13, 3.4),
  ],
  share: [
    line([8, 7.5], [12, 3.5], [16, 7.5]),
    line([12, 3.5], [12, 14.5]),
    line([8.5, 11], [5, 11], [5, 20], [19, 20], [19, 11], [15.5, 11]),
  ],
  tray: [
    line([8, 9.5], [12, 13.5], [16, 9.5]),
    line([12, 3.5], [12, 13.5]),
    line([4, 14], [4, 20], [20, 20], [20, 14]),
  ],
  bin: [
    line([4.5, 6.5], [19.5, 6.5]),
    line([9.5, 6.5], [9.5, 4], [14.5, 4], [14.5, 6.5]),
    line([6.5, 6.5], [7.5, 20], [16.5, 20], [17.5, 6.5]),
  ],
  minus: [line([5, 12], [19, 12])],
  move: [
    line([12, 3.5], [12, 20.5]),
    line([3.5, 12], [20.5, 12]),
    line([9.5, 6], [12, 3.5], [14.5, 6]),
    line([9.5, 18], [12, 20.5], [14.5, 18]),
    line([6, 9.5], [3.5, 12], [6, 14.5]),
    line([18, 9.5], [20.5, 12], [18, 14.5]),
  ],
  whole: [
    line([4, 9], [4, 4], [9, 4]),
    line([15, 4], [20, 4], [20, 9]),
    line([20, 15], [20, 20], [15, 20]),
    line([9, 20], [4, 20], [4, 15]),
  ],
  leader: [ellipse(17.5, 6.5, 3.2), line([14.3, 6.5], [11, 6.5], [5.5, 18]), dot(5.5, 18, 1.7)],
  arrow: [line([19.5, 4.5], [5, 19]), line([5, 12.5], [5, 19], [11.5, 19])],
  outline: [curve(boxPath({ x: 4, y: 6, width: 16, height: 12, radius: 1.5 }))],
  stroke: [
    curve([
      ['M', 3.5, 16],
      ['C', 6, 6, 9.5, 5, 11, 10],
      ['C', 12.5, 15, 10, 18.5, 13, 18.5],
      ['C', 16.5, 18.5, 15.5, 9, 20.5, 8],
    ]),
  ],
  text: [line([5, 8], [5, 5.5], [19, 5.5], [19, 8]), line([12, 5.5], [12, 19]), line([9.5, 19], [14.5, 19])],
  cover: [
    curve(boxPath({ x: 4, y: 6, width: 16, height: 12, radius: 1.5 })),
    line([4.4, 14], [12, 6.4]),
    line([8.4, 17.6], [19.6, 6.4]),
    line([15.8, 17.8], [19.8, 13.8]),
  ],
} as const satisfies Record<string, readonly Mark[]>;

export type IconName = keyof typeof ICONS;
export const ICON_NAMES = Object.keys(ICONS) as IconName[];

/** A thin-line icon, 24 × 24. It stands beside a word or inside a named button, so it has no words of its own. */
export function icon(name: IconName): Drawing {
  return { width: BOX, height: BOX, alt: '', marks: [...ICONS[name]] };
}

function line(...points: [x: number, y: number][]): Mark {
  return { kind: 'line', points, stroke: THIN };
}

function curve(steps: ReturnType<typeof boxPath>): Mark {
  return { kind: 'path', steps, stroke: THIN };
}

function ellipse(cx: number, cy: number, radius: number): Mark {
  return { kind: 'shape', shape: { form: 'ellipse', cx, cy, rx: radius, ry: radius }, stroke: THIN };
}

function dot(cx: number, cy: number, radius: number): Mark {
  return { kind: 'shape', shape: { form: 'ellipse', cx, cy, rx: radius, ry: radius }, fill: 'ink' };
}
