import type { Drawing, Mark } from '../../../drawing/display-list.ts';
import { demoWords } from '../../../text/demo.ts';
import { bird } from './bird.ts';
import { hexagonBolt } from './joint.ts';
import { box, disc, FINE, line, OUTLINE, oval, print } from './marks.ts';
import { scene } from './scene.ts';
import { onTop, type Slab, slab } from './slab.ts';

const DEPTH = { right: 190, up: 150 };
const BODY: Slab = { front: [190, 470, 1030, 560], depth: DEPTH, fill: 'face' };
const LID: Slab = { front: [172, 410, 1066, 74], depth: { right: 198, up: 158 }, fill: 'face' };

/** Wren 24 as it came: coated steel, a full label, an open data port. */
export function closedWren(alt: string): Drawing {
  return scene(alt, [
    ...standing(),
    ...slab(BODY),
    ...slab(LID),
    ...[0.03, 0.27, 0.5, 0.73, 0.97].flatMap((across) => hexagonBolt([172 + 1066 * across, 447], 13)),
    ...cappedPosts(),
    ...steelHandle(236),
    ...wrenLabel([330, 545, 560, 400]),
    ...dataPort([965, 560]),
    ...ventPart([1090, 860]),
  ]);
}

/** Dipper 24 as it came: ribbed plastic, a plain label, one lamp. */
export function closedDipper(alt: string): Drawing {
  return scene(alt, [
    ...standing(),
    ...slab(BODY),
    ...ribs(),
    ...slab(LID),
    ...mouldedGrip(),
    ...cappedPosts(),
    ...dipperLabel([430, 600, 480, 290]),
    disc([1130, 447], 15, { fill: 'sound', stroke: FINE }),
    disc([1126, 442], 5, { fill: 'line' }),
    ...scuffs(),
  ]);
}

/** The shade it throws on the bench. */
function standing(): Mark[] {
  return [oval([790, 1036, 680, 46], { fill: 'black' })];
}

function cappedPosts(): Mark[] {
  return [
    { across: 0.14, ink: 'failed', sign: '+' } as const,
    { across: 0.86, ink: 'ink', sign: '−' } as const,
  ].flatMap(({ across, ink, sign }): Mark[] => {
    const [x, y] = onTop(LID, across, 0.5);
    return [
      oval([x, y + 4, 66, 22], { fill: 'black' }),
      box([x - 50, y - 92, 100, 96], { fill: ink, stroke: OUTLINE }, 20),
      oval([x, y - 84, 46, 17], { fill: ink, stroke: FINE }),
      oval([x, y - 84, 46, 17], { fill: 'line' }),
      box([x - 36, y - 66, 14, 56], { fill: 'line' }, 7),
      print([x + 6, y - 14], sign, { size: 58, weight: 600, ink: 'white' }),
    ];
  });
}

function steelHandle(x: number): Mark[] {
  return [
    box([x - 20, 610, 40, 300], { stroke: { ink: 'ink', width: 32, join: 'round' } }, 18),
    box([x - 20, 610, 40, 300], { stroke: { ink: 'muted', width: 22, join: 'round' } }, 18),
    ...[610, 910].flatMap((y) => hexagonBolt([x, y], 18)),
  ];
}

function wrenLabel([x, y, width, height]: readonly [number, number, number, number]): Mark[] {
  const [name = '', figures = '', more = '', maker = ''] = demoWords.print.wren;
  const left = { anchor: 'start' } as const;
  return [
    box([x, y, width, height], { fill: 'white', stroke: FINE }, 12),
    box([x, y + 172, width, 64], { fill: 'passable' }),
    print([x + 36, y + 122], name, { ...left, size: 78, weight: 600 }),
    ...bird({ kind: 'wren', at: [x + width - 90, y + 92], size: 112, ink: 'passable' }),
    print([x + 36, y + 216], figures, { ...left, size: 37, weight: 600, ink: 'white' }),
    print([x + 36, y + 288], more, { ...left, size: 32 }),
    print([x + 36, y + 332], demoWords.print.wrenSmall, { ...left, size: 28, weight: 400 }),
    print([x + 36, y + 374], maker, { ...left, size: 28, weight: 400 }),
  ];
}

function dipperLabel([x, y, width, height]: readonly [number, number, number, number]): Mark[] {
  const [name = '', figures = ''] = demoWords.print.dipper;
  return [
    box([x, y, width, height], { fill: 'white', stroke: FINE }, 6),
    ...bird({ kind: 'dipper', at: [x + width / 2, y + 76], size: 110, ink: 'face' }),
    print([x + width / 2, y + 188], name, { size: 56, weight: 600 }),
    print([x + width / 2, y + 238], figures, { size: 36 }),
    print([x + width / 2, y + 274], demoWords.print.dipperSmall, { size: 24, weight: 400 }),
  ];
}

/** Round, with pins, and nothing to close it. */
function dataPort([x, y]: readonly [number, number]): Mark[] {
  return [
    disc([x + 125, y + 92], 74, { fill: 'tapeInk', stroke: OUTLINE }),
    disc([x + 119, y + 84], 62, { stroke: { ink: 'line', width: 6 } }),
    disc([x + 125, y + 92], 50, { fill: 'ink' }),
    ...[-20, 0, 20].flatMap((aside) =>
      [-12, 14].map((down) => disc([x + 125 + aside, y + 92 + down], 5, { fill: 'weak' })),
    ),
  ];
}

function ventPart([x, y]: readonly [number, number]): Mark[] {
  return [
    disc([x, y], 54, { fill: 'ink', stroke: OUTLINE }),
    disc([x, y], 42, { fill: 'tapeInk' }),
    ...[0, 60, 120].map((deg) => {
      const [across, down] = [36 * Math.cos((deg * Math.PI) / 180), 36 * Math.sin((deg * Math.PI) / 180)];
      return line([x - across, y - down, x + across, y + down], { ink: 'ink', width: 8 });
    }),
    disc([x, y], 16, { fill: 'muted', stroke: FINE }),
  ];
}

function ribs(): Mark[] {
  const xs = [250, 310, 370, 970, 1030, 1090, 1150];
  return xs.flatMap((x) => [
    box([x, 520, 22, 480], { fill: 'black' }, 11),
    box([x - 6, 520, 8, 480], { fill: 'line' }, 4),
  ]);
}

/** The grip in the lid, and its screws: the last one is missing. */
function mouldedGrip(): Mark[] {
  return [
    box([530, 424, 360, 46], { fill: 'ink', stroke: FINE }, 23),
    box([550, 430, 320, 10], { fill: 'line' }, 5),
    ...[0.03, 0.27, 0.73].flatMap((across) => hexagonBolt([172 + 1066 * across, 447], 13)),
    disc([172 + 1066 * 0.97, 447], 15, { fill: 'black', stroke: FINE }),
    disc([172 + 1066 * 0.97, 447], 8, { fill: 'ink' }),
  ];
}

function scuffs(): Mark[] {
  const scratch = { ink: 'line', width: 4, cap: 'round' } as const;
  return [
    line([1000, 960, 1075, 930], scratch),
    line([1010, 980, 1060, 962], scratch),
    line([300, 905, 322, 960], scratch),
  ];
}
