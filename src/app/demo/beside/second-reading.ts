import type { Grade } from '../../../schema/grade.ts';
import type { SecondAnswer } from '../../../schema/second-reading.ts';
import type { Put } from '../../../storage/store.ts';
import { demoReaderWords as say } from '../../../text/demo-reader.ts';
import { WREN } from '../wren.ts';
import type { BesideFacts } from './beside.ts';

const MINUTE_MS = 60_000;
const READER_NUMBER = 0x5000;

/** Where the second reader sees it as the first did: the grades of these items are taken from the pack. */
const ALIKE: readonly string[] = [
  'case-damage',
  'rating-label',
  'terminal-posts',
  'terminal-caps',
  'handles',
  'metal-wall-lining',
  'debris',
  'stack-hold-down',
  'swelling',
  'cell-joints',
  'cell-links',
  'bms-in-path',
  'every-cell-sensed',
  'second-means',
  'bms-mounting',
  'bms-place',
  'power-lead-to-board',
  'sense-connector',
  'cell-sensor-place',
  'sensor-count',
  'main-lead-pass-through',
  'sense-lead-pass-through',
  'main-lugs',
  'sense-lead-ends',
  'heat-marks',
  'plus-minus-apart',
  'vent-disc',
  'pack-vent-part',
];
const OTHERWISE: readonly (readonly [itemId: string, grade: Grade])[] = [
  ['ip-sealing', 'passable'],
  ['sharp-edges', 'weak'],
  ['fillers', 'sound'],
  ['bms-rating', 'sound'],
  ['sensor-fixing', 'failed'],
  ['sensor-on-vent', 'failed'],
  ['sense-lead-routing', 'weak'],
  ['gas-path', 'passable'],
];
const CANNOT_TELL: readonly string[] = [
  'lid-seal',
  'water-marks',
  'leak',
  'cell-identity',
  'cell-code',
  'cell-film',
  'cell-insulation',
  'compression',
  'cell-support',
  'link-cover',
  'joint-corrosion',
  'bms-heat-path',
  'solder-joints',
  'alarm-and-port',
  'lead-support',
  'pinched-wires',
  'sense-lead-fuse',
  'inline-connectors',
  'cell-vents',
  'potting',
  'ignition-in-gas-path',
];

/** Wren 24 was graded once more, blind, by an invented second reader, who sees some of it otherwise. */
export function secondReadingEntries({ pack, nowMs, idOf }: BesideFacts): Put[] {
  if (pack.packId !== WREN.packId) return [];
  const readerId = idOf(READER_NUMBER);
  const alike = pack.grades.filter(([itemId]) => ALIKE.includes(itemId));
  const answers: (readonly [itemId: string, answer: SecondAnswer])[] = [
    ...[...alike, ...OTHERWISE].map(([itemId, grade]) => [itemId, { kind: 'grade', grade }] as const),
    ...CANNOT_TELL.map((itemId) => [itemId, { kind: 'cannotTell' }] as const),
  ];
  return [
    {
      subject: 'secondReader',
      part: readerId,
      v: { label: say.label, blind: true, finishedAtMs: nowMs - 2 * MINUTE_MS, made: null },
    },
    ...answers.map(([itemId, v]): Put => ({ subject: 'secondAnswer', part: `${readerId}/${itemId}`, v })),
  ];
}
