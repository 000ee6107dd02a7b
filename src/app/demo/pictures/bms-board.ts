import type { Drawing, Mark } from '../../../drawing/display-list.ts';
import { demoWords } from '../../../text/demo.ts';
import { hexagonBolt, nut } from './joint.ts';
import { box, disc, FINE, lead, line, OUTLINE, print } from './marks.ts';
import { SENSE_INKS } from './plate-openings.ts';
import { scene } from './scene.ts';

const LEFT = 190;
const TOP = 190;
const WIDE = 1220;
const HIGH = 800;

export interface BmsBoard {
  alt: string;
  /** Rating, then its type. */
  print: readonly [rating: string, type: string];
  /** Switches under a cooling plate with a thermal switch on it, or standing free with fins. */
  cooling: 'plateWithThermalSwitch' | 'fins';
}

/** The BMS board on its insulating plate: minus of the cells in on the left, minus of the pack out on the right. */
export function bmsBoard({ alt, print: [rating, type], cooling }: BmsBoard): Drawing {
  return scene(alt, [
    ...ground(),
    ...copper(),
    ...controller(),
    ...switches(),
    ...(cooling === 'fins' ? fins() : coolingPlate()),
    ...shunts(),
    ...lugs(),
    ...plug(),
    print([LEFT + 350, TOP + 286], rating, { size: 66, weight: 600, ink: 'white', anchor: 'start' }),
    print([LEFT + 350, TOP + 334], type, { size: 34, ink: 'white', anchor: 'start' }),
  ]);
}

function ground(): Mark[] {
  return [
    box([LEFT - 90, TOP - 60, WIDE + 200, HIGH + 150], { fill: 'black' }, 20),
    box([LEFT - 100, TOP - 80, WIDE + 200, HIGH + 150], { fill: 'white', stroke: OUTLINE }, 16),
    box([LEFT, TOP, WIDE, HIGH], { fill: 'sound', stroke: OUTLINE }, 18),
    box([LEFT + 6, TOP + 6, WIDE - 12, 12], { fill: 'line' }, 6),
    ...[LEFT + 44, LEFT + WIDE - 44].flatMap((x) =>
      [TOP + 44, TOP + HIGH - 44].flatMap((y) => [disc([x, y], 34, { fill: 'weak' }), ...hexagonBolt([x, y], 18)]),
    ),
  ];
}

/** Wide copper under the mask, where the main current runs. */
function copper(): Mark[] {
  return [
    box([LEFT + 40, TOP + 420, WIDE - 80, 290], { fill: 'line' }, 30),
    box([LEFT + 60, TOP + 440, WIDE - 120, 250], { fill: 'sound' }, 24),
    ...[LEFT + 640, LEFT + 700, LEFT + 760, LEFT + 1000, LEFT + 1060].map((x) =>
      line([x, TOP + 130, x, TOP + 400], { ink: 'line', width: 5 }),
    ),
    ...[0, 1, 2, 3, 4, 5, 6, 7].map((row) => box([LEFT + 1020, TOP + 130 + row * 32, 66, 16], { fill: 'weak' }, 3)),
    ...[0, 1, 2, 3, 4, 5, 6, 7].map((row) => box([LEFT + 1110, TOP + 130 + row * 32, 40, 16], { fill: 'white' }, 3)),
  ];
}

function controller(): Mark[] {
  const pins = Array.from({ length: 8 }, (_, place) => 136 + place * 28);
  return [
    ...pins.flatMap((down) => [
      box([LEFT + 676, TOP + down, 30, 13], { fill: 'muted' }),
      box([LEFT + 924, TOP + down, 30, 13], { fill: 'muted' }),
    ]),
    box([LEFT + 700, TOP + 120, 230, 240], { fill: 'ink', stroke: FINE }, 8),
    disc([LEFT + 730, TOP + 150], 11, { fill: 'tapeInk' }),
    box([LEFT + 708, TOP + 128, 214, 10], { fill: 'line' }, 5),
  ];
}

function switches(): Mark[] {
  return Array.from({ length: 9 }, (_, place) => LEFT + 250 + place * 82).flatMap((x) => [
    box([x + 8, TOP + 470, 48, 30], { fill: 'muted', stroke: FINE }),
    box([x, TOP + 494, 64, 76], { fill: 'ink', stroke: FINE }, 4),
    ...[10, 26, 42].map((aside) => box([x + aside, TOP + 570, 11, 34], { fill: 'muted' })),
  ]);
}

/** A thick plate screwed over the switches; the thermal switch is clamped to it. */
function coolingPlate(): Mark[] {
  const [x, y] = [LEFT + 230, TOP + 452];
  const [cx, cy] = [x + 620, y + 76];
  return [
    box([x + 10, y + 12, 780, 150], { fill: 'black' }, 10),
    box([x, y, 780, 150], { fill: 'muted', stroke: OUTLINE }, 10),
    box([x + 8, y + 8, 764, 16], { fill: 'line' }, 8),
    ...[x + 50, x + 390, x + 730].flatMap((bolt) => hexagonBolt([bolt, y + 76], 18)),
    ...lead(
      [
        ['M', cx + 20, cy - 40],
        ['C', cx + 60, cy - 150, cx + 120, cy - 160, cx + 130, cy - 250],
      ],
      { ink: 'white', width: 16 },
    ),
    disc([cx + 5, cy + 7], 62, { fill: 'black' }),
    disc([cx, cy], 58, { fill: 'white', stroke: OUTLINE }),
    disc([cx, cy], 46, { stroke: { ink: 'tapeInk', width: 5 } }),
    print([cx, cy + 11], demoWords.print.thermalSwitch, { size: 31, weight: 600 }),
  ];
}

function fins(): Mark[] {
  return Array.from({ length: 13 }, (_, place) => LEFT + 250 + place * 56).flatMap((x) => [
    box([x, TOP + 430, 26, 76], { fill: 'muted', stroke: FINE }, 4),
    box([x + 4, TOP + 434, 6, 68], { fill: 'line' }, 3),
  ]);
}

function shunts(): Mark[] {
  return [0, 1, 2].flatMap((place) => [
    box([LEFT + 420 + place * 130, TOP + 636, 104, 44], { fill: 'weak', stroke: FINE }, 8),
    box([LEFT + 426 + place * 130, TOP + 641, 92, 10], { fill: 'line' }, 5),
  ]);
}

function lugs(): Mark[] {
  const y = TOP + 566;
  return [
    { x: LEFT + 130, out: -60, text: 'B−' },
    { x: LEFT + WIDE - 130, out: 1660, text: 'P−' },
  ].flatMap(({ x, out, text }) => [
    ...lead(
      [
        ['M', x, y],
        ['C', x + (out - x) * 0.5, y, x + (out - x) * 0.6, y + 60, out, y + 60],
      ],
      { ink: 'tapeInk', width: 92 },
    ),
    disc([x, y], 74, { fill: 'muted', stroke: OUTLINE }),
    ...nut([x, y], 7, { paintedDeg: 60 }),
    print([x, y - 96], text, { size: 46, weight: 600, ink: 'white' }),
  ]);
}

function plug(): Mark[] {
  const pins = SENSE_INKS.map((ink, place) => ({ ink, x: LEFT + 158 + place * 44 }));
  return [
    ...pins.flatMap(({ ink, x }) =>
      lead(
        [
          ['M', x, TOP + 80],
          ['C', x, TOP - 60, x - 30, TOP - 120, x - 30, -40],
        ],
        { ink, width: 20 },
      ),
    ),
    box([LEFT + 118, TOP + 44, 434, 116], { fill: 'white', stroke: OUTLINE }, 10),
    box([LEFT + 118, TOP + 120, 434, 40], { fill: 'black' }, 10),
    box([LEFT + 286, TOP + 140, 98, 40], { fill: 'white', stroke: FINE }, 8),
    ...pins.map(({ x }) => box([x - 11, TOP + 60, 22, 44], { fill: 'tapeInk' }, 3)),
  ];
}
