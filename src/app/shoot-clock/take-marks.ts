import type { PackRecord, RecordTake } from '../../record/pack-record.ts';
import type { TakeMark } from '../../schema/take.ts';
import { MARKED_TESTS } from '../../sheet/chapters/marked-tests.ts';
import { randomId } from '../../storage/open-store.ts';
import type { Put } from '../../storage/store.ts';

/** Our choice: nobody films one take for half a day; after that it is asked when it ended, and nothing is marked in it. */
export const FORGOTTEN_MS = 12 * 3_600_000;

/** The take that runs: the one begun last of those that have not ended. Null where none does. */
export function openTake({ takes }: Pick<PackRecord, 'takes'>): RecordTake | null {
  return takes.findLast(({ endedAtMs }) => endedAtMs === undefined) ?? null;
}

export function isForgotten({ startedAtMs }: Pick<RecordTake, 'startedAtMs'>, nowMs: number): boolean {
  return nowMs - startedAtMs > FORGOTTEN_MS;
}

/**
 * The marks that a change adds to the running take: one for each answer with a grade or readings, photo and test it
 * writes that has none in this take yet. They go into the change itself, so that they are written and undone with it.
 */
export function takeMarkPuts(record: Pick<PackRecord, 'takes'>, puts: readonly Put[], nowMs: number): Put[] {
  const take = openTake(record);
  if (take === null || isForgotten(take, nowMs)) return [];
  const marked = new Set(take.marks.map(nameOf));
  const added: Put[] = [];
  for (const put of puts) {
    const kind = kindOf(put);
    if (kind === null) continue;
    // A clock that was set back meanwhile must not put a mark before its take.
    const mark: TakeMark = { kind, subject: put.subject, part: put.part, atMs: Math.max(nowMs, take.startedAtMs) };
    if (marked.has(nameOf(mark))) continue;
    marked.add(nameOf(mark));
    added.push({ subject: 'takeMark', part: `${take.id}/${randomId()}`, v: mark });
  }
  return added;
}

/**
 * Marks that are not written yet, of the entries a change writes anew: they go along with it, the same ones, so that a
 * change which was refused has nothing left to say once a later one mends it.
 */
export function unwrittenMarks(unsaved: readonly Put[], puts: readonly Put[]): Put[] {
  const named = new Set(puts.map(({ subject, part }) => `${subject}/${part}`));
  const marks = new Map<string, Put>();
  for (const put of unsaved) {
    if (put.subject !== 'takeMark' || 'gone' in put) continue;
    if (named.has(nameOf(put.v as TakeMark))) marks.set(put.part, put);
  }
  return [...marks.values()];
}

function kindOf(put: Put): 'answer' | 'photo' | 'test' | null {
  if ('gone' in put) return null;
  if (put.subject === 'photo') return 'photo';
  if (MARKED_TESTS.some((subject) => subject === put.subject)) return 'test';
  return put.subject === 'answer' && says(put.v) ? 'answer' : null;
}

/** Answers for the rest of a zone are given in one tap, none of them looked at singly: there is nothing on film. */
function says(answer: unknown): boolean {
  if (typeof answer !== 'object' || answer === null || !('kind' in answer)) return false;
  if ('unlooked' in answer && answer.unlooked === true) return false;
  return answer.kind === 'grade' || answer.kind === 'readings';
}

function nameOf(mark: TakeMark): string {
  return mark.kind === 'word' ? mark.kind : `${mark.subject}/${mark.part}`;
}
