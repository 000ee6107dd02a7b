import type { Drawing, Ink, Mark } from '../../../drawing/display-list.ts';
import { box, disc, FINE, HEIGHT, lead, line, OUTLINE, WIDTH } from './marks.ts';
import { scene } from './scene.ts';

const WIRE = {
  black: 'ink',
  white: 'white',
  blue: 'passable',
  grey: 'tapeInk',
  green: 'sound',
  brown: 'weak',
  pale: 'muted',
  red: 'failed',
} as const satisfies Record<string, Ink>;

/** Nine sense wires, from minus to plus. */
export const SENSE_INKS: readonly Ink[] = [
  WIRE.black,
  WIRE.white,
  WIRE.blue,
  WIRE.grey,
  WIRE.green,
  WIRE.white,
  WIRE.brown,
  WIRE.pale,
  WIRE.red,
];

const SLOT = { left: 900, top: 300, width: 470, height: 150 };

/** Thickness of the sheet as it shows below the wires. */
const CUT_EDGE = 18;

export interface PlateOpenings {
  alt: string;
  plate: Extract<Ink, 'muted' | 'face'>;
  /** The slot of the sense wires: bare sheet, or with an edging pressed on all round. */
  slot: 'bare' | 'edged';
}

/** The plate between cells and board, seen from the board: main leads in bushes, sense wires through a slot. */
export function plateOpenings({ alt, plate, slot }: PlateOpenings): Drawing {
  return scene(alt, [
    ...sheet(plate),
    ...bushedLead([330, 375], 'failed'),
    ...bushedLead([620, 375], 'ink'),
    ...board(),
    ...slotMarks(slot),
    ...edgeShade(slot),
    ...SENSE_INKS.flatMap((ink, place) => senseWire(ink, place, slot)),
    ...plug(),
  ]);
}

function sheet(plate: PlateOpenings['plate']): Mark[] {
  return [
    box([-20, 70, WIDTH + 40, HEIGHT], { fill: plate, stroke: OUTLINE }),
    box([-20, 70, WIDTH + 40, 46], { fill: 'line' }),
    line([-20, 118, WIDTH + 20, 118]),
    ...[90, 800, 1510].flatMap((x) => [
      disc([x, 190], 26, { fill: 'tapeInk', stroke: FINE }),
      line([x - 14, 204, x + 14, 176], { ink: 'ink', width: 6 }),
    ]),
  ];
}

/** A thick lead that comes out of a rubber bush and hangs down. */
function bushedLead([x, y]: readonly [number, number], ink: Ink): Mark[] {
  return [
    disc([x + 6, y + 12], 128, { fill: 'black' }),
    disc([x, y], 122, { fill: 'tapeInk', stroke: OUTLINE }),
    disc([x - 6, y - 8], 104, { stroke: { ink: 'line', width: 8 } }),
    disc([x, y], 84, { fill: 'ink' }),
    ...lead(
      [
        ['M', x, y + 6],
        ['C', x + 4, y + 160, x - 34, y + 420, x - 20, HEIGHT + 80],
      ],
      { ink: ink === 'ink' ? 'tapeInk' : ink, width: 116 },
    ),
  ];
}

function slotMarks(slot: PlateOpenings['slot']): Mark[] {
  const { left, top, width, height } = SLOT;
  const hole = box([left, top, width, height], { fill: 'ink', stroke: OUTLINE }, slot === 'bare' ? 4 : 26);
  if (slot === 'bare') {
    const cutEdge = box([left + 3, top + height - CUT_EDGE, width - 6, CUT_EDGE], { fill: 'white', stroke: FINE });
    return [hole, cutEdge];
  }
  const rim = box([left, top, width, height], { stroke: { ink: 'tapeInk', width: 34, join: 'round' } }, 26);
  const edge = box([left - 17, top - 17, width + 34, height + 34], { stroke: FINE }, 38);
  return [hole, rim, edge];
}

/** Out of the dark, over the lower edge, pulled straight towards the plug. */
function senseWire(ink: Ink, place: number, slot: PlateOpenings['slot']): Mark[] {
  const x = SLOT.left + 44 + place * ((SLOT.width - 88) / 8);
  const edge = SLOT.top + SLOT.height;
  const end = 1040 + place * 24;
  const sag = slot === 'bare' ? 0 : 70;
  return lead(
    [
      ['M', x, SLOT.top + 62],
      ['L', x, edge + 10],
      ['C', x - sag * 0.3, edge + 120 + sag, end, 700 + sag, end, 1010],
    ],
    { ink, width: 19 },
  );
}

/** Where taut wires bend over the bare edge, their shade falls on the sheet. */
function edgeShade(slot: PlateOpenings['slot']): Mark[] {
  if (slot === 'edged') return [];
  return [box([SLOT.left + 30, SLOT.top + SLOT.height + 3, SLOT.width - 60, 16], { fill: 'black' })];
}

function board(): Mark[] {
  return [
    box([800, 1060, WIDTH, 200], { fill: 'sound', stroke: OUTLINE }, 10),
    box([800, 1064, WIDTH, 14], { fill: 'line' }),
  ];
}

function plug(): Mark[] {
  return [
    box([1010, 1000, 252, 96], { fill: 'white', stroke: OUTLINE }, 8),
    box([1010, 1064, 252, 32], { fill: 'black' }, 8),
    box([1098, 1084, 76, 34], { fill: 'white', stroke: FINE }, 6),
    ...SENSE_INKS.map((_, place) => box([1033 + place * 24, 1014, 14, 34], { fill: 'tapeInk' })),
  ];
}
