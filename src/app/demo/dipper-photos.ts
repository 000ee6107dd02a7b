import { demoWords, dipperWords } from '../../text/demo.ts';
import type { DemoPhoto } from './demo-pack.ts';
import { bmsBoard } from './pictures/bms-board.ts';
import { closedDipper } from './pictures/closed-packs.ts';
import { coveredPosts } from './pictures/covered-posts.ts';
import { fromAbove } from './pictures/from-above.ts';
import { mainLug } from './pictures/main-lug.ts';
import { plateOpenings } from './pictures/plate-openings.ts';
import { stackApart } from './pictures/stack-apart.ts';
import { DIPPER_TONES } from './pictures/tones.ts';
import { ventsCloseUp } from './pictures/vents-close-up.ts';

const say = dipperWords.photos;
const { print } = demoWords;
const palette = DIPPER_TONES;

/** The drawings of Dipper 24 that stand for photos, in the order of the job. */
export const DIPPER_PHOTOS: readonly DemoPhoto[] = [
  {
    drawing: closedDipper(say.closed.caption),
    palette,
    zone: 'arrival',
    itemIds: ['case-damage', 'rating-label', 'terminal-caps', 'handles', 'lid-seal', 'alarm-and-port'],
    caption: say.closed.caption,
    callouts: [
      {
        kind: 'leader',
        points: [
          [452, 866],
          [320, 1100],
        ],
        text: say.closed.label,
        itemId: 'rating-label',
      },
      {
        kind: 'leader',
        points: [
          [1219, 466],
          [1490, 610],
        ],
        text: say.closed.screw,
        itemId: 'lid-seal',
      },
    ],
  },
  {
    drawing: coveredPosts({ alt: say.covered.caption, volts: '26.2' }),
    palette,
    zone: 'make-safe',
    itemIds: [],
    caption: say.covered.caption,
    coveredTerminals: true,
  },
  {
    drawing: fromAbove({
      alt: say.above.caption,
      case: 'plastic',
      taped: false,
      boardPrint: print.dipperBoard[0],
      fusePrint: print.dipperFuse,
    }),
    palette,
    zone: 'enclosure',
    itemIds: ['every-cell-sensed', 'compression', 'stack-hold-down', 'main-fuse', 'welded-joints'],
    caption: say.above.caption,
    callouts: [
      {
        kind: 'leader',
        points: [
          [136, 440],
          [330, 660],
        ],
        text: say.above.wedge,
        itemId: 'compression',
      },
      {
        kind: 'leader',
        points: [
          [290, 845],
          [410, 1010],
        ],
        text: say.above.fuse,
        itemId: 'main-fuse',
      },
    ],
  },
  {
    drawing: ventsCloseUp({ alt: say.vents.caption, atTheEnd: false, taped: false, joints: 'welded' }),
    palette,
    zone: 'vents',
    itemIds: ['cell-vents', 'vent-disc', 'welded-joints', 'sensor-on-vent'],
    caption: say.vents.caption,
    callouts: [
      {
        kind: 'leader',
        points: [
          [538, 600],
          [750, 420],
        ],
        text: say.vents.free,
        itemId: 'cell-vents',
      },
    ],
  },
  {
    drawing: plateOpenings({ alt: say.edge.caption, plate: 'face', slot: 'edged' }),
    palette,
    zone: 'wiring',
    itemIds: ['main-lead-pass-through', 'sense-lead-pass-through', 'sharp-edges'],
    caption: say.edge.caption,
    callouts: [
      {
        kind: 'leader',
        points: [
          [1387, 420],
          [1490, 640],
        ],
        text: say.edge.edging,
        itemId: 'sense-lead-pass-through',
      },
    ],
  },
  {
    drawing: mainLug({ alt: say.lug.caption, sleeve: false }),
    palette,
    zone: 'wiring',
    itemIds: ['main-lugs', 'heat-marks'],
    caption: say.lug.caption,
    callouts: [
      {
        kind: 'leader',
        points: [
          [1000, 590],
          [1150, 300],
        ],
        text: say.lug.bare,
        itemId: 'main-lugs',
      },
    ],
  },
  {
    drawing: bmsBoard({ alt: say.board.caption, print: print.dipperBoard, cooling: 'fins' }),
    palette,
    zone: 'bms',
    itemIds: ['bms-in-path', 'every-cell-sensed', 'bms-rating', 'bms-heat-path'],
    caption: say.board.caption,
    callouts: [
      {
        kind: 'leader',
        points: [
          [640, 300],
          [860, 150],
        ],
        text: say.board.plug,
        itemId: 'every-cell-sensed',
      },
    ],
  },
  {
    drawing: stackApart(say.apart.caption),
    palette,
    zone: 'cells',
    itemIds: ['cell-insulation', 'cell-sensor-place', 'sensor-fixing', 'cell-film'],
    caption: say.apart.caption,
    callouts: [
      {
        kind: 'leader',
        points: [
          [1110, 720],
          [1330, 1010],
        ],
        text: say.apart.sheet,
        itemId: 'cell-insulation',
      },
      {
        kind: 'leader',
        points: [
          [508, 762],
          [330, 690],
        ],
        text: say.apart.bead,
        itemId: 'cell-sensor-place',
      },
    ],
  },
];
