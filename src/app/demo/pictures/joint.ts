import type { Ink, Mark } from '../../../drawing/display-list.ts';
import { strokeAt } from './cell-top.ts';
import { box, disc, FINE, line, polygon } from './marks.ts';

type Point = readonly [x: number, y: number];

/** A link from post to post, with a hump in the middle that gives when cells swell. */
export function link([fromX, y]: Point, toX: number, { pxPerMm, ink }: { pxPerMm: number; ink: Ink }): Mark[] {
  const px = (mm: number) => mm * pxPerMm;
  const stroke = strokeAt(pxPerMm);
  const [left, right] = [Math.min(fromX, toX) - px(10), Math.max(fromX, toX) + px(10)];
  const middle = (left + right) / 2;
  return [
    box([left, y - px(8.5), right - left, px(17)], { fill: ink, stroke }, px(3)),
    box([left + px(1), y - px(7.5), right - left - px(2), px(2.6)], { fill: 'line' }, px(1.3)),
    box([middle - px(6), y - px(8.5), px(12), px(17)], { fill: 'black' }),
    ...[-6, 0, 6].map((mm) =>
      line([middle + px(mm), y - px(8), middle + px(mm), y + px(8)], { ...stroke, width: stroke.width * 0.6 }),
    ),
  ];
}

/** Washer, spring washer and nut on a stud, with a line of torque paint over nut and link. */
export function nut([cx, cy]: Point, pxPerMm: number, { paintedDeg }: { paintedDeg?: number } = {}): Mark[] {
  const px = (mm: number) => mm * pxPerMm;
  const stroke = strokeAt(pxPerMm);
  return [
    disc([cx, cy], px(8), { fill: 'tapeInk', stroke }),
    disc([cx, cy], px(7), { fill: 'muted' }),
    polygon(hexagon([cx, cy], px(6)), { fill: 'muted', stroke }),
    polygon(hexagon([cx - px(0.4), cy - px(0.4)], px(4.8)), { fill: 'line' }),
    disc([cx, cy], px(3), { fill: 'tapeInk', stroke }),
    disc([cx - px(0.5), cy - px(0.5)], px(1.4), { fill: 'line' }),
    ...(paintedDeg === undefined ? [] : [torquePaint([cx, cy], px, paintedDeg)]),
  ];
}

/** A small bolt of a case or a board, seen on its head. */
export function hexagonBolt([cx, cy]: Point, radius: number): Mark[] {
  return [
    disc([cx, cy], radius * 1.3, { fill: 'tapeInk', stroke: FINE }),
    polygon(hexagon([cx, cy], radius), { fill: 'muted', stroke: { ...FINE, width: 2.5 } }),
  ];
}

function torquePaint([cx, cy]: Point, px: (mm: number) => number, deg: number): Mark {
  const [across, down] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  return line([cx + across * px(2.6), cy + down * px(2.6), cx + across * px(10.5), cy + down * px(10.5)], {
    ink: 'failed',
    width: px(1.3),
    cap: 'round',
  });
}

/** Its corners one after the other, as `polygon` takes them. */
export function hexagon([cx, cy]: Point, radius: number): number[] {
  return [0, 1, 2, 3, 4, 5].flatMap((corner) => {
    const angle = (corner * Math.PI) / 3 + Math.PI / 12;
    return [cx + radius * Math.cos(angle), cy + radius * Math.sin(angle)];
  });
}
