import type { Ink, Mark } from '../../../drawing/display-list.ts';
import { type Box, box, OUTLINE, polygon } from './marks.ts';

/** How far the back of a thing is drawn to the right of and above its front. */
export interface Depth {
  right: number;
  up: number;
}

export interface Slab {
  front: Box;
  depth: Depth;
  fill: Ink;
}

/** A box seen from its front, with its top in the light and its right side in the shade (cabinet projection). */
export function slab({ front, depth, fill }: Slab): Mark[] {
  const [x, y, width, height] = front;
  const { right, up } = depth;
  const far = x + width;
  const top = [x, y, x + right, y - up, far + right, y - up, far, y];
  const side = [far, y, far + right, y - up, far + right, y - up + height, far, y + height];
  return [
    polygon(top, { fill }),
    polygon(top, { fill: 'line', stroke: OUTLINE }),
    polygon(side, { fill }),
    polygon(side, { fill: 'black', stroke: OUTLINE }),
    box(front, { fill, stroke: OUTLINE }),
  ];
}

/** A place on the top of a slab: across and back are shares of its width and depth. */
export function onTop({ front, depth }: Slab, across: number, back: number): readonly [x: number, y: number] {
  const [x, y, width] = front;
  return [x + width * across + depth.right * back, y - depth.up * back];
}
