import type { Drawing, Ink, Mark } from '../../../drawing/display-list.ts';
import { CELL_WIDTH_MM, cellTop, POST_FROM_MIDDLE_MM } from './cell-top.ts';
import { link, nut } from './joint.ts';
import { box, FINE, HEIGHT, lead, line, OUTLINE, oval, path, polygon } from './marks.ts';
import { scene } from './scene.ts';

const PX_PER_MM = 9;
const MIDDLE_Y = 600;
const PITCH = CELL_WIDTH_MM * PX_PER_MM;
const POST = POST_FROM_MIDDLE_MM * PX_PER_MM;

export interface VentsCloseUp {
  alt: string;
  /** The first cell shown is the end cell: wall, lining and end plate stand left of it. */
  atTheEnd: boolean;
  /** Tape over the first vent, holding the sensor's bead partly over it. */
  taped: boolean;
  joints: 'bolted' | 'welded';
}

/** Straight down on the vents of three cells. */
export function ventsCloseUp({ alt, atTheEnd, taped, joints }: VentsCloseUp): Drawing {
  const left = atTheEnd ? 205 : -110;
  const xs = [0, 1, 2, 3].map((place) => left + PITCH * (place + 0.5));
  const [first = 0] = xs;
  return scene(alt, [
    ...(atTheEnd ? wall(left) : []),
    ...xs.flatMap((x, place) => cellTop({ middle: [x, MIDDLE_Y], pxPerMm: PX_PER_MM, plusUp: place % 2 === 1 })),
    ...links(xs, joints),
    ...(taped ? tapedBead(first) : []),
  ]);
}

function wall(left: number): Mark[] {
  return [
    box([-20, -20, 100, HEIGHT + 40], { fill: 'face', stroke: OUTLINE }),
    box([52, 0, 14, HEIGHT], { fill: 'line' }),
    box([80, -20, 38, HEIGHT + 40], { fill: 'white', stroke: FINE }),
    box([118, -20, left - 118, HEIGHT + 40], { fill: 'tapeInk', stroke: OUTLINE }),
    box([126, 0, 18, HEIGHT], { fill: 'line' }),
  ];
}

function links(xs: readonly number[], joints: VentsCloseUp['joints']): Mark[] {
  const [x0 = 0, x1 = 0, x2 = 0, x3 = 0] = xs;
  const ink: Ink = joints === 'bolted' ? 'weak' : 'muted';
  const upper = MIDDLE_Y - POST;
  const lower = MIDDLE_Y + POST;
  const bars = [
    ...link([x0, upper], x1, { pxPerMm: PX_PER_MM, ink }),
    ...link([x2, upper], x3, { pxPerMm: PX_PER_MM, ink }),
    ...link([x1, lower], x2, { pxPerMm: PX_PER_MM, ink }),
  ];
  const ends: [number, number][] = [
    [x0, upper],
    [x1, upper],
    [x2, upper],
    [x1, lower],
    [x2, lower],
  ];
  const tops = ends.flatMap((at, place) =>
    joints === 'bolted' ? nut(at, PX_PER_MM, { paintedDeg: 20 + place * 9 }) : seam(at),
  );
  return [...bars, ...tops];
}

/** A weld: an even round seam. */
function seam([cx, cy]: readonly [number, number]): Mark[] {
  const radius = 5.5 * PX_PER_MM;
  return [
    oval([cx, cy, radius, radius], { stroke: { ink: 'tapeInk', width: 14 } }),
    oval([cx, cy, radius, radius], { stroke: { ink: 'line', width: 5, dash: [5, 8] } }),
  ];
}

/** The bead lies over the lower right of the vent; its wires leave upward between the cells, under the same tape. */
function tapedBead(ventX: number): Mark[] {
  const wire = (aside: number) =>
    lead(
      [
        ['M', ventX + 92, MIDDLE_Y + 40],
        ['C', ventX + 210, MIDDLE_Y - 20, ventX + 208 + aside, MIDDLE_Y - 150, ventX + 204 + aside, -30],
      ],
      { ink: aside === 0 ? 'failed' : 'ink', width: 13 },
    );
  return [
    ...wire(0),
    ...wire(20),
    oval([ventX + 84, MIDDLE_Y + 46, 46, 34], { fill: 'ink' }),
    oval([ventX + 70, MIDDLE_Y + 34, 16, 9], { fill: 'line' }),
    ...strip(ventX),
    path(
      [
        ['M', ventX + 38, MIDDLE_Y + 52],
        ['C', ventX + 44, MIDDLE_Y + 2, ventX + 122, MIDDLE_Y + 2, ventX + 132, MIDDLE_Y + 44],
      ],
      { stroke: { ink: 'black', width: 7, cap: 'round' } },
    ),
  ];
}

/** Torn at both ends, laid on a little askew. */
function strip(ventX: number): Mark[] {
  const edge = [
    [-176, -62],
    [150, -104],
    [158, -64],
    [150, -38],
    [164, 4],
    [156, 40],
    [170, 66],
    [-160, 112],
    [-170, 76],
    [-160, 44],
    [-176, 8],
    [-166, -26],
  ] as const;
  const laid = (by: number) => edge.flatMap(([x, y]) => [ventX + x + by, MIDDLE_Y + y + by]);
  return [
    polygon(laid(8), { fill: 'black' }),
    polygon(laid(0), { fill: 'tape', stroke: { ...FINE, width: 3 } }),
    line([ventX - 150, MIDDLE_Y - 42, ventX + 140, MIDDLE_Y - 80], { ink: 'line', width: 9, cap: 'round' }),
  ];
}
