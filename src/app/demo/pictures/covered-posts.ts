import type { Drawing, Ink, Mark } from '../../../drawing/display-list.ts';
import { demoWords } from '../../../text/demo.ts';
import { hexagonBolt } from './joint.ts';
import { box, disc, FINE, lead, line, OUTLINE, polygon, print } from './marks.ts';
import { scene } from './scene.ts';

/** The lid from above: both posts under boots and tape, the meter beside it with the pack's volts. */
export function coveredPosts({ alt, volts }: { alt: string; volts: string }): Drawing {
  return scene(alt, [
    ...lid(),
    ...coveredPost([370, 300], { ink: 'failed', sign: '+', turn: -1 }),
    ...coveredPost([1230, 300], { ink: 'ink', sign: '−', turn: 1 }),
    ...meter([560, 560], volts),
  ]);
}

function lid(): Mark[] {
  return [
    box([118, 128, 1380, 500], { fill: 'black' }, 30),
    box([110, 80, 1380, 530], { fill: 'face', stroke: OUTLINE }, 26),
    box([140, 110, 1320, 470], { stroke: { ink: 'line', width: 6 } }, 16),
    ...[165, 800, 1435].flatMap((x) => [135, 555].flatMap((y) => hexagonBolt([x, y], 17))),
  ];
}

interface Cover {
  ink: Ink;
  sign: string;
  /** Which way the tape leans. */
  turn: 1 | -1;
}

function coveredPost([x, y]: readonly [number, number], { ink, sign, turn }: Cover): Mark[] {
  const slope = 26 * turn;
  const tape = [x - 205, y + 8 + slope, x + 205, y + 8 - slope, x + 205, y + 108 - slope, x - 205, y + 108 + slope];
  return [
    box([x - 96, y - 88, 210, 230], { fill: 'black' }, 44),
    box([x - 105, y - 110, 210, 230], { fill: ink, stroke: OUTLINE }, 44),
    box([x - 84, y - 88, 26, 170], { fill: 'line' }, 13),
    print([x, y - 22], sign, { size: 104, weight: 600, ink: 'white' }),
    polygon(
      tape.map((way) => way + 7),
      { fill: 'black' },
    ),
    polygon(tape, { fill: 'white' }),
    polygon(tape, { fill: 'tape', stroke: FINE }),
    print([x, y + 76], demoWords.print.covered, { size: 50, weight: 600 }),
  ];
}

function meter([x, y]: readonly [number, number], volts: string): Mark[] {
  const probe = (from: number, to: number, ink: Ink) =>
    lead(
      [
        ['M', from, y + 540],
        ['C', from, y + 680, to, y + 470, to, y + 700],
      ],
      { ink, width: 20 },
    );
  return [
    ...probe(x + 180, x - 260, 'tapeInk'),
    ...probe(x + 300, x + 620, 'failed'),
    box([x + 14, y + 24, 480, 560], { fill: 'black' }, 60),
    box([x, y, 480, 560], { fill: 'weak', stroke: OUTLINE }, 60),
    box([x + 24, y + 24, 432, 512], { fill: 'ink' }, 44),
    box([x + 56, y + 56, 368, 190], { fill: 'white', stroke: OUTLINE }, 14),
    print([x + 400, y + 214], volts, { size: 132, weight: 600, anchor: 'end' }),
    print([x + 76, y + 94], demoWords.print.hold, { size: 28, weight: 600, anchor: 'start' }),
    print([x + 404, y + 94], demoWords.print.volts, { size: 28, weight: 600, anchor: 'end' }),
    disc([x + 240, y + 376], 96, { fill: 'tapeInk', stroke: OUTLINE }),
    line([x + 240, y + 376, x + 182, y + 306], { ink: 'white', width: 16, cap: 'round' }),
    ...[0, 40, 80, 120, 160, 200, 240, 280, 320].map((deg) => tick([x + 240, y + 376], deg)),
    disc([x + 180, y + 506], 17, { fill: 'tapeInk', stroke: { ink: 'white', width: 4 } }),
    disc([x + 300, y + 506], 17, { fill: 'failed', stroke: { ink: 'white', width: 4 } }),
  ];
}

function tick([cx, cy]: readonly [number, number], deg: number): Mark {
  const [across, down] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  return line([cx + 108 * across, cy + 108 * down, cx + 124 * across, cy + 124 * down], { ink: 'white', width: 6 });
}
