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
  const testNumber = pack.tests.tests.findIndex(({ v }) => 'kind' in v && v.kind === 'coldCharge');
  const marked: [seconds: number, kind: 'answer' | 'photo' | 'test', subject: string, part: string | undefined][] = [
    [78, 'photo', 'photo', photoOf('stack-hold-down')],
    [151, 'answer', 'answer', 'cell-vents'],
    [172, 'photo', 'photo', photoOf('sensor-on-vent')],
    [236, 'answer', 'answer', 'sensor-on-vent'],
    [405, 'test', 'cutOff', testNumber === -1 ? undefined : idOf(FIRST_TEST_NUMBER + testNumber)],
    [688, 'answer', 'answer', 'sense-lead-pass-through'],
  ];
  const marks: TakeMark[] = [
    { kind: 'word', label: say.lidComesOff, atMs: startedAtMs + 12 * SECOND_MS },
    ...marked.flatMap(([seconds, kind, subject, part]) =>
      part === undefined ? [] : [{ kind, subject, part, atMs: startedAtMs + seconds * SECOND_MS }],
    ),
  ];
  return [
    { subject: 'take', part: takeId, v: take },
    ...marks.map((v, place): Put => ({ subject: 'takeMark', part: `${takeId}/${idOf(TAKE_NUMBER + 1 + place)}`, v })),
  ];
}

/** As the live tests of an invented pack are numbered (live/test-entries.ts). */
const FIRST_TEST_NUMBER = 0x6000;
