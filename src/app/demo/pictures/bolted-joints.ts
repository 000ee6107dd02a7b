import type { Drawing, Ink, Mark } from '../../../drawing/display-list.ts';
import { CELL_WIDTH_MM, cellTop, POST_FROM_MIDDLE_MM } from './cell-top.ts';
import { link, nut } from './joint.ts';
import { box, disc, FINE, HEIGHT, lead, OUTLINE, WIDTH } from './marks.ts';
import { scene } from './scene.ts';

const PX_PER_MM = 11;
const POST_Y = 520;
const PITCH = CELL_WIDTH_MM * PX_PER_MM;

/** The lower posts of three cells: links, nuts with torque paint, ring lugs of the sense wires below them. */
export function boltedJoints(alt: string): Drawing {
  const xs = [0, 1, 2, 3].map((place) => 140 + PITCH * place);
  const [x0 = 0, x1 = 0, x2 = 0, x3 = 0] = xs;
  const middleY = POST_Y - POST_FROM_MIDDLE_MM * PX_PER_MM;
  return scene(alt, [
    box([-20, 700, WIDTH + 40, HEIGHT], { fill: 'tapeInk' }),
    box([-20, 700, WIDTH + 40, HEIGHT], { fill: 'black' }),
    ...xs.flatMap((x, place) => cellTop({ middle: [x, middleY], pxPerMm: PX_PER_MM, plusUp: place % 2 === 1 })),
    ...band(),
    ...link([x0, POST_Y], x1, { pxPerMm: PX_PER_MM, ink: 'weak' }),
    ...link([x2, POST_Y], x3, { pxPerMm: PX_PER_MM, ink: 'weak' }),
    ...ringLug(x1, 'passable'),
    ...ringLug(x2, 'failed'),
    ...[x0, x1, x2, x3].flatMap((x, place) => nut([x, POST_Y], PX_PER_MM, { paintedDeg: -125 + place * 17 })),
  ]);
}

function band(): Mark[] {
  return [
    box([-20, 742, WIDTH + 40, 52], { fill: 'muted', stroke: OUTLINE }),
    box([-20, 750, WIDTH + 40, 12], { fill: 'line' }),
  ];
}

/** The lug lies under the washer; its wire leaves downward, over the band. */
function ringLug(x: number, ink: Ink): Mark[] {
  return [
    ...lead(
      [
        ['M', x, POST_Y + 200],
        ['C', x, POST_Y + 420, x + 40, POST_Y + 480, x + 30, HEIGHT + 40],
      ],
      { ink, width: 26 },
    ),
    box([x - 20, POST_Y + 40, 40, 110], { fill: 'muted', stroke: FINE }, 8),
    disc([x, POST_Y], 108, { fill: 'muted', stroke: FINE }),
    box([x - 24, POST_Y + 128, 48, 92], { fill: ink, stroke: FINE }, 12),
    box([x - 14, POST_Y + 136, 10, 76], { fill: 'line' }, 5),
  ];
}
