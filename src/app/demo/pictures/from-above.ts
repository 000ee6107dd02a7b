import type { Drawing, Mark, PathStep } from '../../../drawing/display-list.ts';
import { CELL_LENGTH_MM, CELL_WIDTH_MM, cellTop, POST_FROM_MIDDLE_MM } from './cell-top.ts';
import { hexagonBolt, link, nut } from './joint.ts';
import { box, disc, FINE, lead, line, OUTLINE, polygon, print } from './marks.ts';
import { SENSE_INKS } from './plate-openings.ts';
import { scene } from './scene.ts';

const PX_PER_MM = 3.3;
const CELLS = 8;
const PITCH = CELL_WIDTH_MM * PX_PER_MM;
const LEFT = 800 - (CELLS * PITCH) / 2;
const MIDDLE_Y = 375;
const POST = POST_FROM_MIDDLE_MM * PX_PER_MM;
const HALF = (CELL_LENGTH_MM * PX_PER_MM) / 2;
/** Between cells and board. */
const PLATE_Y = MIDDLE_Y + HALF + 26;
const BOARD = { left: 520, top: 775, width: 560, height: 270 };

export interface FromAbove {
  alt: string;
  /** Steel with lining, end plates and bands, or ribbed plastic without. */
  case: 'steel' | 'plastic';
  /** Tape over the vent of the first cell. */
  taped: boolean;
  boardPrint: string;
  /** A fuse in the plus lead, with its rating. */
  fusePrint?: string;
}

/** The open pack from straight above: eight cells in a row, the board in the bay below them. */
export function fromAbove(pack: FromAbove): Drawing {
  const xs = Array.from({ length: CELLS }, (_, place) => LEFT + PITCH * (place + 0.5));
  return scene(pack.alt, [
    ...tub(pack.case),
    ...(pack.case === 'steel' ? endPlates() : wedges()),
    ...xs.flatMap((x, place) => cellTop({ middle: [x, MIDDLE_Y], pxPerMm: PX_PER_MM, plusUp: place % 2 === 1 })),
    ...(pack.case === 'steel' ? bands() : []),
    ...links(xs, pack.case),
    ...(pack.taped ? tape(xs[0] ?? 0) : []),
    ...plate(pack.case),
    ...board(pack.boardPrint),
    ...mainLeads(xs),
    ...(pack.fusePrint === undefined ? [] : fuse(pack.fusePrint)),
    ...senseWires(xs),
  ]);
}

function tub(kind: FromAbove['case']): Mark[] {
  const lining = kind === 'steel' ? [box([92, 74, 1416, 1012], { stroke: { ink: 'white', width: 12 } }, 4)] : ribs();
  return [
    box([76, 62, 1464, 1058], { fill: 'black' }, 30),
    box([58, 40, 1484, 1080], { fill: 'face', stroke: OUTLINE }, 24),
    box([66, 48, 1468, 1064], { stroke: { ink: 'line', width: 8 } }, 20),
    box([84, 66, 1432, 1028], { fill: 'tapeInk', stroke: OUTLINE }, 8),
    box([84, 66, 1432, 1028], { fill: 'black' }, 8),
    ...lining,
    ...[71, 1529].flatMap((x) => [160, 580, 1000].flatMap((y) => hexagonBolt([x, y], 8))),
  ];
}

function ribs(): Mark[] {
  const ys = Array.from({ length: 9 }, (_, place) => 130 + place * 105);
  return ys.flatMap((y) => [
    box([84, y, 26, 16], { fill: 'face', stroke: FINE }),
    box([1490, y, 26, 16], { fill: 'face', stroke: FINE }),
  ]);
}

function endPlates(): Mark[] {
  const height = 2 * HALF + 12;
  return [LEFT - 34, LEFT + CELLS * PITCH + 6].flatMap((x) => [
    box([x, MIDDLE_Y - HALF - 6, 28, height], { fill: 'muted', stroke: OUTLINE }, 4),
    box([x + 5, MIDDLE_Y - HALF, 6, height - 12], { fill: 'line' }),
  ]);
}

/** Two bands from end plate to end plate, along the edges of the lids. */
function bands(): Mark[] {
  return [MIDDLE_Y - HALF + 4, MIDDLE_Y + HALF - 22].flatMap((y) => [
    box([LEFT - 34, y, CELLS * PITCH + 68, 18], { fill: 'muted', stroke: FINE }, 3),
    box([LEFT - 28, y + 3, CELLS * PITCH + 56, 4], { fill: 'line' }),
  ]);
}

/** Pieces of board driven in between the stack and the wall. */
function wedges(): Mark[] {
  return [
    polygon([112, 150, 150, 150, 160, 600, 112, 600], { fill: 'weak', stroke: FINE }),
    polygon([1488, 150, 1450, 150, 1440, 600, 1488, 600], { fill: 'weak', stroke: FINE }),
  ];
}

function links(xs: readonly number[], kind: FromAbove['case']): Mark[] {
  const ink = kind === 'steel' ? 'weak' : 'muted';
  const top = (x: number, y: number) =>
    kind === 'steel' ? nut([x, y], PX_PER_MM, { paintedDeg: 35 }) : [disc([x, y], 15, { stroke: FINE })];
  return xs.slice(1).flatMap((x, place) => {
    const before = xs[place] ?? x;
    const y = place % 2 === 0 ? MIDDLE_Y - POST : MIDDLE_Y + POST;
    return [...link([before, y], x, { pxPerMm: PX_PER_MM, ink }), ...top(before, y), ...top(x, y)];
  });
}

function tape(x: number): Mark[] {
  const y = MIDDLE_Y;
  const strip = [x - 68, y - 24, x + 62, y - 40, x + 66, y + 26, x - 62, y + 42];
  return [
    polygon(
      strip.map((way) => way + 4),
      { fill: 'black' },
    ),
    polygon(strip, { fill: 'tape', stroke: FINE }),
  ];
}

function plate(kind: FromAbove['case']): Mark[] {
  return [
    box([86, PLATE_Y, 1428, 30], { fill: kind === 'steel' ? 'muted' : 'face', stroke: FINE }),
    box([90, PLATE_Y + 4, 1420, 7], { fill: 'line' }),
  ];
}

function board(text: string): Mark[] {
  const { left, top, width, height } = BOARD;
  const switches = Array.from({ length: 8 }, (_, place) => left + 42 + place * 62);
  return [
    box([left - 24, top - 18, width + 48, height + 36], { fill: 'white', stroke: FINE }, 8),
    box([left, top, width, height], { fill: 'sound', stroke: OUTLINE }, 8),
    box([left + 4, top + 4, width - 8, 8], { fill: 'line' }),
    ...switches.flatMap((x) => [
      box([x, top + 148, 44, 50], { fill: 'ink' }, 3),
      box([x + 6, top + 138, 32, 14], { fill: 'muted' }),
    ]),
    box([left + 26, top + 222, 150, 22], { fill: 'weak', stroke: FINE }, 3),
    box([left + 330, top + 56, 76, 60], { fill: 'ink' }, 4),
    print([left + 36, top + 116], text, { size: 36, weight: 600, ink: 'white', anchor: 'start' }),
    ...[left + 16, left + width - 16].flatMap((x) =>
      [top + 18, top + height - 18].map((y) => disc([x, y], 8, { fill: 'muted', stroke: FINE })),
    ),
  ];
}

/** Plus from the first cell to its post; minus from the last one through the board to the other post. */
function mainLeads(xs: readonly number[]): Mark[] {
  const [plusX = 0, minusX = 0] = [xs[0], xs.at(-1)];
  const y = MIDDLE_Y + POST;
  const boardRight = BOARD.left + BOARD.width;
  const route = (...steps: PathStep[]) => steps;
  const plus = route(['M', plusX, y], ['C', plusX, 760, 235, 800, 235, 940]);
  const toBoard = route(['M', minusX, y], ['C', minusX, 790, 1300, 840, boardRight - 40, 838]);
  const toPost = route(['M', boardRight - 40, 985], ['C', 1220, 985, 1260, 960, 1380, 960]);
  return [
    ...lead(plus, { ink: 'failed', width: 34 }),
    ...lead(toBoard, { ink: 'tapeInk', width: 34 }),
    ...lead(toPost, { ink: 'tapeInk', width: 34 }),
    ...lug([plusX, y]),
    ...lug([minusX, y]),
    ...lug([boardRight - 40, 838]),
    ...lug([boardRight - 40, 985]),
    ...packPost([235, 960], '+'),
    ...packPost([1400, 960], '−'),
  ];
}

function fuse(text: string): Mark[] {
  return [
    box([180, 742, 120, 126], { fill: 'muted', stroke: OUTLINE }, 8),
    box([166, 762, 148, 86], { fill: 'white', stroke: OUTLINE }, 8),
    print([240, 818], text, { size: 38, weight: 600 }),
  ];
}

function lug(at: readonly [number, number]): Mark[] {
  return [disc(at, 28, { fill: 'muted', stroke: FINE }), ...nut(at, 2.6)];
}

function packPost([x, y]: readonly [number, number], sign: '+' | '−'): Mark[] {
  return [
    box([x - 76, y - 76, 152, 152], { fill: sign === '+' ? 'failed' : 'ink', stroke: OUTLINE }, 18),
    disc([x, y], 48, { fill: 'muted', stroke: OUTLINE }),
    disc([x - 4, y - 4], 30, { fill: 'line' }),
    print([x, y + 18], sign, { size: 56, weight: 600 }),
  ];
}

/** One from each node of the string: those of the upper links come down between the cells. */
function senseWires(xs: readonly number[]): Mark[] {
  const plugX = BOARD.left + 46;
  const nodes = [0, 1, 2, 3, 4, 5, 6, 7, 8].map((node) => {
    const between = LEFT + PITCH * node;
    if (node === 0) return { x: (xs[0] ?? 0) + 22, y: MIDDLE_Y + POST };
    if (node === CELLS) return { x: (xs.at(-1) ?? 0) - 22, y: MIDDLE_Y + POST };
    return { x: between, y: node % 2 === 1 ? MIDDLE_Y - POST + 24 : MIDDLE_Y + POST + 24 };
  });
  return [
    ...nodes.flatMap(({ x, y }, node) => {
      const ink = SENSE_INKS[node] ?? 'ink';
      const end = plugX + 12 + node * 26;
      return lead(
        [
          ['M', x, y],
          ['L', x, PLATE_Y - 8],
          ['C', x, PLATE_Y + 60, end, PLATE_Y + 20, end, BOARD.top + 12],
        ],
        { ink, width: 7 },
      );
    }),
    box([plugX - 12, BOARD.top - 4, 258, 44], { fill: 'white', stroke: FINE }, 5),
    line([plugX, BOARD.top + 26, plugX + 234, BOARD.top + 26], { ink: 'black', width: 8 }),
  ];
}
