import type { Drawing, Mark, PathStep } from '../../../drawing/display-list.ts';
import { demoWords } from '../../../text/demo.ts';
import { box, FINE, HEIGHT, line, OUTLINE, path, polygon, print, WIDTH } from './marks.ts';
import { scene } from './scene.ts';

const say = demoWords.trip;
const PLOT = { left: 290, bottom: 930, pxPerS: 9.6, pxPerA: 3.3 };
const HELD_A = 180;
const OPENED_AT_S = 94;
const LAST_S = 120;

/** A page of the tester's notebook: 180 A held until the switch plate was hot, then nothing. */
export function notebookTrip(alt: string): Drawing {
  return scene(alt, [...page(), ...axes(), ...heat(), ...current(), ...pencil()]);
}

function page(): Mark[] {
  const squares = (from: number, to: number) =>
    Array.from({ length: Math.floor((to - from) / 48) + 1 }, (_, place) => from + place * 48);
  return [
    box([114, 66, 1410, 1110], { fill: 'black' }, 10),
    box([100, 46, 1410, 1110], { fill: 'white', stroke: FINE }, 8),
    ...squares(146, 1490).map((x) => line([x, 50, x, 1152], { ink: 'black', width: 1.5 })),
    ...squares(96, 1130).map((y) => line([104, y, 1506, y], { ink: 'black', width: 1.5 })),
    ...[220, 420, 620, 820, 1020].flatMap((y) => [
      box([76, y, 70, 18], { fill: 'muted', stroke: FINE }, 9),
      box([128, y - 3, 24, 24], { fill: 'ink' }, 12),
    ]),
    print([250, 152], say.title, { size: 54, weight: 600, anchor: 'start' }),
  ];
}

const xAt = (timeS: number) => PLOT.left + timeS * PLOT.pxPerS;
const yAt = (currentA: number) => PLOT.bottom - currentA * PLOT.pxPerA;

function axes(): Mark[] {
  return [
    line([PLOT.left, yAt(215), PLOT.left, PLOT.bottom, xAt(LAST_S + 3), PLOT.bottom], OUTLINE),
    ...[0, 30, 60, 90, 120].flatMap((timeS) => [
      line([xAt(timeS), PLOT.bottom, xAt(timeS), PLOT.bottom + 18], OUTLINE),
      print([xAt(timeS), PLOT.bottom + 62], String(timeS), { size: 38 }),
    ]),
    print([xAt(LAST_S) + 40, PLOT.bottom + 108], say.axis, { size: 36, anchor: 'end' }),
    line([PLOT.left, yAt(100), xAt(LAST_S), yAt(100)], { ink: 'tapeInk', width: 4, dash: [16, 12] }),
    print([PLOT.left - 20, yAt(100) + 12], '100 A', { size: 36, anchor: 'end' }),
    print([PLOT.left - 20, yAt(HELD_A) + 12], say.currentA, { size: 36, weight: 600, anchor: 'end' }),
  ];
}

/** Rises as a body that is heated evenly and cooled by the air, and falls once the current is gone. */
function heat(): Mark[] {
  const steps: PathStep[] = [
    ['M', xAt(0), yAt(18)],
    ['C', xAt(22), yAt(88), xAt(56), yAt(124), xAt(OPENED_AT_S), yAt(136)],
    ['C', xAt(102), yAt(120), xAt(110), yAt(106), xAt(LAST_S), yAt(94)],
  ];
  return [
    path(steps, { stroke: { ink: 'failed', width: 9, cap: 'round', join: 'round' } }),
    print([xAt(17), yAt(112)], say.heat, { size: 38, weight: 600, ink: 'failed', anchor: 'start' }),
    print([xAt(OPENED_AT_S) + 22, yAt(142)], say.heatAtTrip, { size: 40, weight: 600, ink: 'failed', anchor: 'start' }),
  ];
}

function current(): Mark[] {
  const hand = [0, 12, 27, 41, 56, 70, 83].flatMap((timeS, place) => [xAt(timeS), yAt(HELD_A + (place % 2) * 1.5)]);
  return [
    line([xAt(0), yAt(0), ...hand, xAt(OPENED_AT_S), yAt(HELD_A), xAt(OPENED_AT_S), yAt(0), xAt(LAST_S), yAt(0)], {
      ink: 'passable',
      width: 11,
      cap: 'round',
      join: 'round',
    }),
    print([xAt(OPENED_AT_S) + 22, yAt(188)], say.opened, { size: 44, weight: 600, anchor: 'start' }),
  ];
}

function pencil(): Mark[] {
  const [x, y] = [WIDTH - 420, HEIGHT - 110];
  return [
    polygon([x - 520, y - 16, x, y - 10, x, y + 40, x - 520, y + 34], { fill: 'weak', stroke: OUTLINE }),
    polygon([x - 520, y - 10, x, y - 4, x, y + 8, x - 520, y + 2], { fill: 'line' }),
    polygon([x, y - 10, x + 80, y + 17, x, y + 40], { fill: 'white', stroke: FINE }),
    polygon([x + 54, y + 8, x + 80, y + 17, x + 54, y + 25], { fill: 'ink' }),
  ];
}
