import type { Drawing, Mark } from '../../../drawing/display-list.ts';
import { hexagon } from './joint.ts';
import { box, disc, FINE, lead, line, OUTLINE, polygon } from './marks.ts';
import { scene } from './scene.ts';

const STUD = [470, 600] as const;

/** The positive main lug on its post, from straight above: crimp, strands, and the sleeve or its absence. */
export function mainLug({ alt, sleeve }: { alt: string; sleeve: boolean }): Drawing {
  return scene(alt, [
    ...floor(),
    ...base(),
    ...cable(),
    ...(sleeve ? [] : strands()),
    ...ring(),
    ...crimp(),
    ...(sleeve ? sleeveMarks() : []),
    ...stud(),
  ]);
}

function floor(): Mark[] {
  return [
    box([-20, -20, 1640, 1240], { fill: 'face' }),
    box([-20, -20, 1640, 1240], { fill: 'black' }),
    ...[140, 1060].flatMap((y) => [
      line([-20, y, 1620, y], { ink: 'black', width: 12 }),
      line([-20, y + 9, 1620, y + 9], { ink: 'line', width: 5 }),
    ]),
  ];
}

function base(): Mark[] {
  return [
    box([196, 316, 590, 620], { fill: 'black' }, 60),
    box([170, 290, 590, 620], { fill: 'failed', stroke: OUTLINE }, 60),
    box([200, 320, 530, 560], { stroke: { ink: 'line', width: 10 } }, 44),
  ];
}

function cable(): Mark[] {
  return lead(
    [
      ['M', 1090, 600],
      ['C', 1300, 600, 1420, 640, 1660, 760],
    ],
    { ink: 'failed', width: 190 },
  );
}

/** Copper that shows between barrel and insulation. */
function strands(): Mark[] {
  return [
    box([960, 522, 110, 156], { fill: 'weak', stroke: FINE }, 8),
    ...[548, 574, 600, 626, 652].map((y) => line([962, y, 1066, y], { ink: 'black', width: 6 })),
    line([966, 536, 1064, 536], { ink: 'line', width: 8 }),
  ];
}

/** Ring and palm of the lug. */
function ring(): Mark[] {
  const [x, y] = STUD;
  return [
    disc([x + 10, y + 14], 200, { fill: 'black' }),
    polygon([x + 60, y - 176, 800, 524, 800, 676, x + 60, y + 176], { fill: 'muted', stroke: OUTLINE }),
    disc([x, y], 190, { fill: 'muted', stroke: OUTLINE }),
    polygon([x + 62, y - 168, 800, 530, 800, 670, x + 62, y + 168], { fill: 'muted' }),
    line([x + 80, y - 150, 790, 546], { ink: 'line', width: 12, cap: 'round' }),
  ];
}

/** Barrel with a hexagonal crimp: three flats in view, their edges straight. */
function crimp(): Mark[] {
  return [
    box([770, 506, 270, 188], { fill: 'muted', stroke: OUTLINE }, 18),
    box([780, 516, 250, 26], { fill: 'line' }, 10),
    box([780, 652, 250, 32], { fill: 'black' }, 10),
    box([822, 496, 150, 208], { fill: 'muted', stroke: OUTLINE }, 6),
    box([826, 500, 142, 58], { fill: 'line' }),
    box([826, 642, 142, 58], { fill: 'black' }),
    line([824, 558, 970, 558]),
    line([824, 642, 970, 642]),
    disc([796, 600], 13, { fill: 'weak', stroke: FINE }),
  ];
}

/** Shrunk over barrel and insulation, so that the crimp shows through as steps. */
function sleeveMarks(): Mark[] {
  return [
    polygon([1000, 504, 1060, 496, 1110, 500, 1330, 516, 1322, 742, 1110, 700, 1060, 704, 1000, 696], {
      fill: 'ink',
      stroke: { ...OUTLINE, width: 8 },
    }),
    line([1014, 540, 1104, 536, 1318, 556], { ink: 'line', width: 18, cap: 'round' }),
    line([1062, 508, 1062, 694], { ink: 'black', width: 8 }),
  ];
}

function stud(): Mark[] {
  const [x, y] = STUD;
  return [
    disc([x, y], 132, { fill: 'tapeInk', stroke: OUTLINE }),
    disc([x - 4, y - 4], 118, { stroke: { ink: 'line', width: 8 } }),
    disc([x, y], 108, { fill: 'muted', stroke: FINE }),
    line([x + 74, y - 82, x + 98, y - 54], { ink: 'ink', width: 8 }),
    polygon(hexagon([x, y], 96), { fill: 'muted', stroke: OUTLINE }),
    polygon(hexagon([x - 5, y - 5], 80), { fill: 'line' }),
    disc([x, y], 50, { fill: 'tapeInk', stroke: OUTLINE }),
    disc([x, y], 34, { stroke: { ink: 'black', width: 6 } }),
    disc([x - 8, y - 9], 22, { fill: 'line' }),
    line([x + 30, y + 52, x + 118, y + 142], { ink: 'tape', width: 20, cap: 'round' }),
  ];
}
