import type { Mark, Stroke } from '../../../drawing/display-list.ts';
import { box, disc, line, oval } from './marks.ts';

/** A prismatic cell as invented for the demo bench, seen from above. */
export const CELL_WIDTH_MM = 48;
export const CELL_LENGTH_MM = 160;
export const POST_FROM_MIDDLE_MM = 56;

export interface CellTop {
  middle: readonly [x: number, y: number];
  pxPerMm: number;
  /** The plus post is the upper one. */
  plusUp: boolean;
}

/** Film rim, lid plate, two posts in their gaskets, and the vent between them. */
export function cellTop({ middle: [cx, cy], pxPerMm, plusUp }: CellTop): Mark[] {
  const px = (mm: number) => mm * pxPerMm;
  const stroke = strokeAt(pxPerMm);
  const [width, length] = [px(CELL_WIDTH_MM), px(CELL_LENGTH_MM)];
  const [left, top] = [cx - width / 2, cy - length / 2];
  const rim = px(2.6);
  const upper = cy - px(POST_FROM_MIDDLE_MM);
  const lower = cy + px(POST_FROM_MIDDLE_MM);
  return [
    box([left, top, width, length], { fill: 'passable', stroke }, px(3)),
    box([left + rim, top + rim, width - 2 * rim, length - 2 * rim], { fill: 'muted' }, px(2)),
    box([left + rim, top + rim, px(3), length - 2 * rim], { fill: 'line' }, px(1.5)),
    box([left + width - rim - px(3), top + rim, px(3), length - 2 * rim], { fill: 'black' }, px(1.5)),
    ...post([cx, upper], pxPerMm, plusUp),
    ...post([cx, lower], pxPerMm, !plusUp),
    ...vent([cx, cy], pxPerMm),
    ...code([cx + px(9), cy + px(23)], pxPerMm),
  ];
}

export function strokeAt(pxPerMm: number): Stroke {
  return { ink: 'ink', width: Math.max(2.5, Math.min(5, pxPerMm * 0.6)), join: 'round', cap: 'round' };
}

function post([cx, cy]: readonly [number, number], pxPerMm: number, plus: boolean): Mark[] {
  const px = (mm: number) => mm * pxPerMm;
  const stroke = strokeAt(pxPerMm);
  return [
    box([cx - px(14), cy - px(11), px(28), px(22)], { fill: plus ? 'failed' : 'ink', stroke }, px(4)),
    disc([cx, cy], px(8.5), { fill: 'muted', stroke }),
    disc([cx, cy], px(3.4), { fill: 'tapeInk' }),
  ];
}

/** The recess, its thin disc, and the scores along which it opens. */
function vent([cx, cy]: readonly [number, number], pxPerMm: number): Mark[] {
  const px = (mm: number) => mm * pxPerMm;
  const stroke = strokeAt(pxPerMm);
  const score = { ...stroke, ink: 'tapeInk', width: stroke.width * 0.7 } as const;
  const arm = (side: 1 | -1, up: 1 | -1) => line([cx + side * px(5), cy, cx + side * px(8.6), cy + up * px(4)], score);
  return [
    oval([cx, cy, px(14), px(9)], { fill: 'tapeInk', stroke }),
    oval([cx + px(0.5), cy + px(0.7), px(12), px(7.2)], { fill: 'white' }),
    oval([cx + px(0.5), cy + px(0.7), px(12), px(7.2)], { fill: 'black' }),
    line([cx - px(5), cy, cx + px(5), cy], score),
    ...([1, -1] as const).flatMap((side) => [arm(side, 1), arm(side, -1)]),
  ];
}

/** A printed square code that says nothing. */
const CODE_ROWS = ['11010', '01101', '10011', '01010', '11101'];

function code([left, top]: readonly [number, number], pxPerMm: number): Mark[] {
  const dot = pxPerMm * 1.5;
  return CODE_ROWS.flatMap((row, down) =>
    [...row].flatMap((bit, across) =>
      bit === '1' ? [box([left + across * dot, top + down * dot, dot, dot], { fill: 'tapeInk' })] : [],
    ),
  );
}
