import type { Drawing, Ink, Mark } from '../../../drawing/display-list.ts';
import { box, disc, FINE, lead, line, OUTLINE, oval, polygon } from './marks.ts';
import { scene } from './scene.ts';
import { onTop, type Slab, slab } from './slab.ts';

const FACE = { width: 700, height: 560 };
const CELL_DEPTH = { right: 120, up: 84 };
const SHEET_DEPTH = { right: 12, up: 8 };

/** Two middle cells drawn apart: the rigid sheet between them, the sensor's bead and pad on the face of the front one. */
export function stackApart(alt: string): Drawing {
  const back = cell([690, 300]);
  const sheet: Slab = { front: [470, 400, FACE.width + 16, FACE.height + 16], depth: SHEET_DEPTH, fill: 'white' };
  const front = cell([200, 540]);
  return scene(alt, [
    ...shadeOf(back),
    ...cellMarks(back),
    ...shadeOf(sheet),
    ...slab(sheet),
    box([494, 424, FACE.width - 32, 12], { fill: 'black' }, 6),
    ...shadeOf(front),
    ...cellMarks(front),
    ...bead([550, 800]),
  ]);
}

function cell([x, y]: readonly [number, number]): Slab {
  return { front: [x, y, FACE.width, FACE.height], depth: CELL_DEPTH, fill: 'passable' };
}

/** The shade a standing thing throws to its right. */
function shadeOf({ front: [x, y, width, height], depth: { right, up } }: Slab): Mark[] {
  const [far, foot] = [x + width, y + height];
  return [
    polygon([x, foot, far, foot, far + right, foot - up, far + right + 90, foot - up + 50, far + 70, foot + 28], {
      fill: 'black',
    }),
  ];
}

function cellMarks(body: Slab): Mark[] {
  const [x, y, width, height] = body.front;
  return [
    ...slab(body),
    box([x + 26, y + 26, width - 52, height - 52], { stroke: { ink: 'line', width: 6 } }, 14),
    line([x + 60, y + height - 70, x + 230, y + height - 70], { ink: 'line', width: 10, cap: 'round' }),
    line([x + 60, y + height - 46, x + 180, y + height - 46], { ink: 'line', width: 10, cap: 'round' }),
    ...post(onTop(body, 0.18, 0.5), 'ink'),
    ...post(onTop(body, 0.82, 0.5), 'failed'),
    ...topVent(onTop(body, 0.5, 0.5)),
  ];
}

function post([x, y]: readonly [number, number], ink: Ink): Mark[] {
  return [
    oval([x, y + 4, 62, 24], { fill: ink, stroke: FINE }),
    box([x - 34, y - 30, 68, 32], { fill: 'muted', stroke: FINE }, 6),
    oval([x, y - 30, 34, 13], { fill: 'muted', stroke: FINE }),
    oval([x, y - 30, 34, 13], { fill: 'line' }),
  ];
}

function topVent([x, y]: readonly [number, number]): Mark[] {
  return [oval([x, y, 66, 24], { fill: 'tapeInk', stroke: FINE }), oval([x + 2, y + 3, 54, 17], { fill: 'muted' })];
}

function bead([x, y]: readonly [number, number]): Mark[] {
  return [
    box([x - 104, y - 74, 208, 148], { fill: 'black' }, 14),
    box([x - 110, y - 82, 208, 148], { fill: 'white', stroke: OUTLINE }, 12),
    ...[0, 18].flatMap((aside) =>
      lead(
        [
          ['M', x, y - 4],
          ['C', x + 130, y + 40 + aside, x + 190, y + 190 + aside, x + 420, y + 330 + aside],
        ],
        { ink: aside === 0 ? 'failed' : 'tapeInk', width: 14 },
      ),
    ),
    disc([x - 8, y - 8], 42, { fill: 'ink', stroke: OUTLINE }),
    oval([x - 20, y - 22, 14, 9], { fill: 'line' }),
  ];
}
