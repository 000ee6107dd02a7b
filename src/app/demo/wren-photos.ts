import { demoWords, wrenWords } from '../../text/demo.ts';
import type { DemoPhoto } from './demo-pack.ts';
import { bmsBoard } from './pictures/bms-board.ts';
import { boltedJoints } from './pictures/bolted-joints.ts';
import { closedWren } from './pictures/closed-packs.ts';
import { coveredPosts } from './pictures/covered-posts.ts';
import { fromAbove } from './pictures/from-above.ts';
import { mainLug } from './pictures/main-lug.ts';
import { notebookTrip } from './pictures/notebook-trip.ts';
import { plateOpenings } from './pictures/plate-openings.ts';
import { WREN_TONES } from './pictures/tones.ts';
import { ventsCloseUp } from './pictures/vents-close-up.ts';

const say = wrenWords.photos;
const { print } = demoWords;
const palette = WREN_TONES;

/** The drawings of Wren 24 that stand for photos, in the order of the job. */
export const WREN_PHOTOS: readonly DemoPhoto[] = [
  {
    drawing: closedWren(say.closed.caption),
    palette,
    zone: 'arrival',
    itemIds: ['case-damage', 'rating-label', 'terminal-caps', 'ip-sealing', 'alarm-and-port', 'pack-vent-part'],
    caption: say.closed.caption,
    callouts: [
      {
        kind: 'leader',
        points: [
          [1146, 690],
          [1475, 640],
        ],
        text: say.closed.port,
        itemId: 'ip-sealing',
      },
    ],
  },
  {
    drawing: notebookTrip(say.trip.caption),
    palette,
    zone: 'bms',
    itemIds: ['overcurrent-cutoff'],
    caption: say.trip.caption,
    callouts: [
      {
        kind: 'arrow',
        points: [
          [1182, 700],
          [1010, 800],
        ],
        itemId: 'overcurrent-cutoff',
      },
      { kind: 'text', points: [[640, 830]], text: say.trip.trip, itemId: 'overcurrent-cutoff' },
    ],
  },
  {
    drawing: coveredPosts({ alt: say.covered.caption, volts: '26.4' }),
    palette,
    zone: 'make-safe',
    itemIds: [],
    caption: say.covered.caption,
    coveredTerminals: true,
  },
  {
    drawing: fromAbove({ alt: say.above.caption, case: 'steel', taped: true, boardPrint: print.wrenBoard[0] }),
    palette,
    zone: 'enclosure',
    itemIds: ['metal-wall-lining', 'every-cell-sensed', 'stack-hold-down', 'compression', 'sense-lead-routing'],
    caption: say.above.caption,
    callouts: [
      {
        kind: 'outline',
        points: [
          [160, 312],
          [332, 438],
        ],
        itemId: 'cell-vents',
      },
      { kind: 'text', points: [[352, 450]], text: say.above.tape, itemId: 'cell-vents' },
    ],
  },
  {
    drawing: ventsCloseUp({ alt: say.vents.caption, atTheEnd: true, taped: true, joints: 'bolted' }),
    palette,
    zone: 'vents',
    itemIds: ['cell-vents', 'sensor-on-vent', 'cell-sensor-place', 'sensor-count', 'sensor-fixing', 'vent-disc'],
    caption: say.vents.caption,
    callouts: [
      {
        kind: 'leader',
        points: [
          [300, 580],
          [140, 380],
        ],
        text: say.vents.strip,
        itemId: 'cell-vents',
      },
      {
        kind: 'leader',
        points: [
          [500, 640],
          [680, 850],
        ],
        text: say.vents.bead,
        itemId: 'sensor-on-vent',
      },
      {
        kind: 'outline',
        points: [
          [703, 495],
          [1003, 705],
        ],
      },
      { kind: 'text', points: [[706, 450]], text: say.vents.free },
    ],
  },
  {
    drawing: plateOpenings({ alt: say.edge.caption, plate: 'muted', slot: 'bare' }),
    palette,
    zone: 'wiring',
    itemIds: ['sense-lead-pass-through', 'main-lead-pass-through', 'sharp-edges', 'sense-connector'],
    caption: say.edge.caption,
    callouts: [
      {
        kind: 'leader',
        points: [
          [1300, 450],
          [1480, 610],
        ],
        text: say.edge.bare,
        itemId: 'sense-lead-pass-through',
      },
      {
        kind: 'leader',
        points: [
          [722, 330],
          [800, 560],
        ],
        text: say.edge.bushed,
        itemId: 'main-lead-pass-through',
      },
      {
        kind: 'arrow',
        points: [
          [935, 470],
          [800, 760],
        ],
        itemId: 'sense-lead-pass-through',
      },
    ],
  },
  {
    drawing: mainLug({ alt: say.lug.caption, sleeve: true }),
    palette,
    zone: 'wiring',
    itemIds: ['main-lugs', 'heat-marks'],
    caption: say.lug.caption,
    callouts: [
      {
        kind: 'leader',
        points: [
          [897, 590],
          [1060, 300],
        ],
        text: say.lug.crimp,
        itemId: 'main-lugs',
      },
    ],
  },
  {
    drawing: bmsBoard({ alt: say.board.caption, print: print.wrenBoard, cooling: 'plateWithThermalSwitch' }),
    palette,
    zone: 'bms',
    itemIds: ['bms-in-path', 'every-cell-sensed', 'bms-rating', 'second-means', 'high-temperature-cutoff'],
    caption: say.board.caption,
    callouts: [
      {
        kind: 'leader',
        points: [
          [1040, 718],
          [1240, 930],
        ],
        text: say.board.thermal,
        itemId: 'overcurrent-cutoff',
      },
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
    drawing: boltedJoints(say.joints.caption),
    palette,
    zone: 'cells',
    itemIds: ['cell-joints', 'cell-links', 'sense-lead-ends'],
    caption: say.joints.caption,
    callouts: [
      {
        kind: 'leader',
        points: [
          [624, 392],
          [470, 230],
        ],
        text: say.joints.paint,
        itemId: 'cell-joints',
      },
    ],
  },
];
