import { gradeRecord } from '../../../src/grading/grade-record.ts';
import type { PackRecord, RecordTake } from '../../../src/record/pack-record.ts';
import { chaptersOf, type TakeChapters } from '../../../src/sheet/chapters/chapters-of.ts';
import { deepFreeze } from '../../grading/deep-freeze.ts';
import { HUT_CHECKLIST, hutRecord, stampAt } from '../hut-pack.ts';

export const TAKE_ID = 'a'.repeat(32);
export const BEGAN_MS = Date.UTC(2026, 10, 25, 9);

type Mark = RecordTake['marks'][number];

/** A mark so many seconds after the start, of the entry given or the tester's own. */
export function markAt(seconds: number, given: { label?: string; subject?: string; part?: string } = {}): Mark {
  const { label, subject, part } = given;
  const id = seconds
    .toString(16)
    .padStart(32, '0')
    .slice(-32)
    .replace(/[^0-9a-f]/g, 'e');
  const atMs = BEGAN_MS + Math.round(seconds * 1000);
  if (subject === undefined || part === undefined)
    return { id, kind: 'word', atMs, ...(label !== undefined && { label }) };
  const kind = subject === 'answer' ? 'answer' : subject === 'photo' ? 'photo' : 'test';
  return { id, kind, subject, part, atMs };
}

/** The hut pack with one take of so many seconds. */
export function filmed(
  marks: readonly Mark[],
  {
    lastsS = 600,
    offsetMs = 0,
    record = {},
  }: { lastsS?: number; offsetMs?: number; record?: Partial<PackRecord> } = {},
): PackRecord {
  const take: RecordTake = {
    id: TAKE_ID,
    startedAtMs: BEGAN_MS,
    endedAtMs: BEGAN_MS + lastsS * 1000,
    made: stampAt(BEGAN_MS),
    marks,
    ...(offsetMs !== 0 && { offsetMs }),
  };
  return deepFreeze(hutRecord({ takes: [take], ...record }));
}

/** Its chapters; throws where there are none. */
export function chaptersIn(record: PackRecord): TakeChapters {
  const titled = { definition: HUT_CHECKLIST, grading: gradeRecord(HUT_CHECKLIST, record) };
  const made = chaptersOf(record, titled, TAKE_ID);
  if (made === null) throw new RangeError('chaptersIn: the take must have ended');
  return made;
}
