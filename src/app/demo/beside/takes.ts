import type { TakeMark } from '../../../schema/take.ts';
import type { Put } from '../../../storage/store.ts';
import { demoTakeWords as say } from '../../../text/demo-take.ts';
import { WREN } from '../wren.ts';
import type { BesideFacts } from './beside.ts';

const SECOND_MS = 1000;
/** Minutes before it is laid out: the pack was live and open from 26 to 8 minutes ago. */
const BEGAN_MINUTES_AGO = 25;
const LASTED_S = 15 * 60 + 20;
/** The camera ran before the clock was started. */
const OFFSET_MS = 4000;
const TAKE_NUMBER = 0x4800;
/** As the live tests of an invented pack are numbered (live/test-entries.ts). */
const FIRST_TEST_NUMBER = 0x6000;

/** Of Wren 24 the lid coming off was filmed: one take, its marks tied to photos, answers and a test. */
export function takeEntries({ pack, nowMs, painted, idOf }: BesideFacts): Put[] {
  if (pack.packId !== WREN.packId) return [];
  const takeId = idOf(TAKE_NUMBER);
  const startedAtMs = nowMs - BEGAN_MINUTES_AGO * 60 * SECOND_MS;
  const take = {
    label: say.label,
    startedAtMs,
    endedAtMs: startedAtMs + LASTED_S * SECOND_MS,
    offsetMs: OFFSET_MS,
    made: null,
  };
  const photoOf = (itemId: string) => painted[pack.photos.findIndex(({ itemIds }) => itemIds.includes(itemId))]?.sha256;
  const coldTest = pack.tests.tests.findIndex(({ v }) => 'kind' in v && v.kind === 'coldCharge');
  const at = (seconds: number) => startedAtMs + seconds * SECOND_MS;
  const answered = (seconds: number, itemId: string): TakeMark[] => [
    { kind: 'answer', subject: 'answer', part: itemId, atMs: at(seconds) },
  ];
  const photographed = (seconds: number, part = ''): TakeMark[] =>
    part === '' ? [] : [{ kind: 'photo', subject: 'photo', part, atMs: at(seconds) }];
  const tested = (seconds: number, number: number): TakeMark[] =>
    number === -1
      ? []
      : [{ kind: 'test', subject: 'cutOff', part: idOf(FIRST_TEST_NUMBER + number), atMs: at(seconds) }];
  const marks: TakeMark[] = [
    { kind: 'word', label: say.lidComesOff, atMs: at(12) },
    ...photographed(78, photoOf('stack-hold-down')),
    ...answered(151, 'cell-vents'),
    ...photographed(172, photoOf('sensor-on-vent')),
    ...answered(236, 'sensor-on-vent'),
    ...tested(405, coldTest),
    ...answered(688, 'sense-lead-pass-through'),
  ];
  return [
    { subject: 'take', part: takeId, v: take },
    ...marks.map((v, place): Put => ({ subject: 'takeMark', part: `${takeId}/${idOf(TAKE_NUMBER + 1 + place)}`, v })),
  ];
}
