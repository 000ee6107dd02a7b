import type { Answer } from '../../schema/answer.ts';
import type { Put } from '../../storage/store.ts';
import { localDay } from '../../text/format-day.ts';
import { CAUTIONS } from '../../text/make-safe.ts';
import { besideEntries } from './beside/beside.ts';
import type { DemoCallout, DemoPack, DemoPhoto, PaintedFacts } from './demo-pack.ts';
import type { ReadDemoLog } from './live/demo-tests.ts';
import { testEntries } from './live/test-entries.ts';

export interface LayOut {
  /** The checklist the pack is graded by. */
  checklist: { id: string; version: string; sha256: string };
  /** One for each photo of the pack, in their order. */
  painted: readonly PaintedFacts[];
  /** One for each log of the pack's live tests, in their order. */
  logs: readonly ReadDemoLog[];
  nowMs: number;
  utcOffsetMinutes: number;
}

const MINUTE_MS = 60_000;
const DAY_MS = 24 * 60 * MINUTE_MS;

/** Everything an invented pack says, as entries to write. */
export function entriesOf(pack: DemoPack, layOut: LayOut): Put[] {
  return [
    { subject: 'pack', part: 'made', v: { demo: true } },
    { subject: 'pack', part: 'checklist', v: layOut.checklist },
    { subject: 'pack', part: 'route', v: 'whole' },
    ...fields('nameplate', { ...pack.nameplate, ...purchaseDays(pack, layOut) }),
    ...Object.entries(pack.facts).map(([part, choice]): Put => ({ subject: 'fact', part, v: { choice } })),
    ...answers(pack),
    ...testEntries(pack.tests, {
      logs: layOut.logs,
      idOf: (number) => idWithin(pack, number),
      dayBefore: (days) => dayBefore(layOut, days),
    }),
    ...pack.photos.flatMap((photo, place) => photoEntries(pack, layOut, { photo, place })),
    ...makeSafeEntries(pack, layOut),
    ...besideEntries({
      pack,
      nowMs: layOut.nowMs,
      painted: layOut.painted,
      dayBefore: (days) => dayBefore(layOut, days),
      idOf: (number) => idWithin(pack, number),
    }),
    ...fields('words', pack.words),
    ...fields('afterwards', { ...pack.afterwards, ...afterwardsDay(pack, layOut) }),
  ];
}

function fields(subject: string, values: object): Put[] {
  return Object.entries(values).map(([part, v]) => ({ subject, part, v }));
}

function purchaseDays({ daysAgo }: DemoPack, layOut: LayOut) {
  return { pricedOn: dayBefore(layOut, daysAgo.priced), receivedOn: dayBefore(layOut, daysAgo.received) };
}

function afterwardsDay({ daysAgo }: DemoPack, layOut: LayOut) {
  return daysAgo.afterwards === undefined ? {} : { on: dayBefore(layOut, daysAgo.afterwards) };
}

function dayBefore({ nowMs, utcOffsetMinutes }: LayOut, days: number): string {
  return localDay(nowMs - days * DAY_MS, utcOffsetMinutes);
}

function answers({ grades, readings, notSeen, doesNotApply, notes }: DemoPack): Put[] {
  const given: [itemId: string, answer: Answer][] = [
    ...grades.map(([itemId, grade, evidence]): [string, Answer] => [itemId, { kind: 'grade', grade, evidence }]),
    ...Object.entries(readings).map(([itemId, values]): [string, Answer] => [
      itemId,
      { kind: 'readings', values, evidence: 'measured' },
    ]),
    ...Object.entries(notSeen).map(([itemId, reason]): [string, Answer] => [itemId, { kind: 'notSeen', reason }]),
    ...Object.entries(doesNotApply).map(([id, reason]): [string, Answer] => [id, { kind: 'doesNotApply', reason }]),
  ];
  const answered = new Set(given.map(([itemId]) => itemId));
  const noted = Object.entries(notes).filter(([itemId]) => !answered.has(itemId));
  return [
    ...given.map(([part, answer]): Put => {
      const note = notes[part];
      return { subject: 'answer', part, v: note === undefined ? answer : { ...answer, note } };
    }),
    // What the live tests grade needs no answer; a note of the tester's stands beside it.
    ...noted.map(([part, note]): Put => ({ subject: 'answer', part, v: { kind: 'open', note } })),
  ];
}

function photoEntries(
  pack: DemoPack,
  { painted }: LayOut,
  { photo, place }: { photo: DemoPhoto; place: number },
): Put[] {
  const { sha256, byteCount, widthPx, heightPx } = paintedAt(painted, place);
  const { zone, caption, itemIds, callouts = [] } = photo;
  const v = { zone, widthPx, heightPx, byteCount, originalSha256: sha256, caption, made: null };
  return [
    { subject: 'photo', part: sha256, v },
    ...itemIds.map((itemId): Put => ({ subject: 'photoItem', part: `${sha256}/${itemId}`, v: true })),
    ...callouts.map(
      (callout, number): Put => ({
        subject: 'callout',
        part: idWithin(pack, place * 256 + number),
        v: { photoId: sha256, ...calloutValue(callout, photo), made: null },
      }),
    ),
  ];
}

function calloutValue({ kind, points, text, itemId }: DemoCallout, { drawing }: DemoPhoto) {
  const inImage = (at: number, whole: number) => Number((at / whole).toFixed(4));
  return {
    kind,
    points: points.map(([x, y]) => [inImage(x, drawing.width), inImage(y, drawing.height)]),
    ...(text !== undefined && { text }),
    ...(itemId !== undefined && { itemId }),
  };
}

function makeSafeEntries(pack: DemoPack, layOut: LayOut): Put[] {
  const { minutesAgo, ...measured } = pack.makeSafe;
  const passedAtMs = layOut.nowMs - minutesAgo * MINUTE_MS;
  const v = {
    passedAtMs,
    day: localDay(passedAtMs, layOut.utcOffsetMinutes),
    ...measured,
    coveredTerminalsPhoto: coveredTerminals(pack, layOut),
    acknowledged: CAUTIONS.filter(({ above50V }) => !above50V).map(({ id }) => id),
  };
  return [
    { subject: 'makeSafe', part: idWithin(pack, 0xffff), v },
    ...Object.entries(pack.states).map(
      ([part, state]): Put => ({
        subject: 'state',
        part,
        v: { enteredAtMs: layOut.nowMs - state.minutesAgo * MINUTE_MS, leftBehind: [...state.leftBehind] },
      }),
    ),
  ];
}

function coveredTerminals(pack: DemoPack, { painted }: LayOut): string {
  const place = pack.photos.findIndex(({ coveredTerminals }) => coveredTerminals);
  return paintedAt(painted, place).sha256;
}

function paintedAt(painted: readonly PaintedFacts[], place: number): PaintedFacts {
  const found = painted[place];
  if (found === undefined)
    throw new RangeError(`entriesOf: photo ${place} must be painted, got ${painted.length} in all`);
  return found;
}

/** An id of the pack's own that is the same each time: its first 28 digits and a number. */
function idWithin({ packId }: DemoPack, number: number): string {
  return packId.slice(0, 28) + number.toString(16).padStart(4, '0');
}
