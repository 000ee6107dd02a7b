import type { Named } from '../../schema/live-tests/live-tests.ts';
import { MAX_LINE } from '../../schema/text-limits.ts';
import { randomId } from '../../storage/open-store.ts';
import type { NewPhotoBytes, Put } from '../../storage/store.ts';
import { logWords as say } from '../../text/logs/log.ts';
import type { PackSession } from '../state/pack-session.ts';
import { isProvisional } from '../state/provisional.ts';
import { hashOfFile } from './hash-of-file.ts';
import type { LogFile, LogInHand } from './log-in-hand.ts';
import { matchedRuns, readAgain } from './read-again.ts';
import { CURVE_POINTS, type ReadRun, runFromLog } from './run-from-log.ts';

/** What Keep would do: kept runs that are read anew, found runs that are added. */
export interface KeepPlan {
  /** Ids of kept runs with the place of the found one. */
  updated: Map<string, number>;
  added: number[];
  /** Kept runs that have no counterpart now. */
  unmatched: number;
}

export function keepPlan(session: PackSession, log: LogInHand): KeepPlan {
  const found = log.read.value?.summary.runs ?? [];
  const kept = keptRuns(session, log.file.logId);
  const updated = matchedRuns(kept, found);
  const taken = new Set(updated.values());
  const added = [...log.ticked.value].filter((place) => !taken.has(place)).toSorted((one, other) => one - other);
  return { updated, added, unmatched: kept.length - updated.size };
}

export type Kept = 'kept' | 'notSaved' | 'fileChanged';

/** Log, runs and bytes in one transaction. What could not be written waits on the screen to be tried again. */
export async function keepRuns(session: PackSession, log: LogInHand, instrumentId: string | null): Promise<Kept> {
  const read = log.read.value;
  const photos = await newBytes(log.file);
  if (read === null || photos === 'fileChanged') return 'fileChanged';
  const { logId, name, byteCount } = log.file;
  const { summary, mapping } = read;
  const { updated, added } = keepPlan(session, log);
  const fresh = new Map<number, ReadRun>();
  for (const place of new Set([...updated.values(), ...added])) {
    const curve = await log.curve(place, CURVE_POINTS);
    const rowCount = rowsBetween(summary.runs[place]);
    fresh.set(place, runFromLog({ ...summary, rowCount, place, curve, logId, mapping }));
  }
  const { tests } = session.record.value;
  const instrument = instrumentId === null ? {} : { instrumentId };
  const known = tests.logs.find(({ id }) => id === logId);
  const fields = { name: shortName(name), ...(known && withoutId(known)) };
  const v = { ...fields, byteCount, rowCount: summary.rowCount, ...instrument, made: stampOf(known) };
  const puts: Put[] = [{ subject: 'log', part: logId, v }];
  for (const [id, place] of updated) {
    const stored = tests.runs.find((run) => run.id === id);
    const run = fresh.get(place);
    if (stored === undefined || run === undefined) continue;
    puts.push({ subject: 'run', part: id, v: { ...readAgain(withoutId(stored), run), made: stampOf(stored) } });
  }
  // Written together they are made at one stamp, and their ids alone order them: as they stand in the log.
  const ids = added.map(() => randomId()).toSorted();
  for (const [at, place] of added.entries()) {
    const part = ids[at] ?? randomId();
    puts.push({ subject: 'run', part, v: { ...fresh.get(place), ...instrument, made: null } });
  }
  const saved = await session.put({ puts, photos, undoLabel: say.kept(fields.name, fresh.size) });
  return saved ? 'kept' : 'notSaved';
}

/** The bytes to be stored with the log; none if they are there. A file may have been written to since it was read. */
async function newBytes({ picked, logId }: LogFile): Promise<NewPhotoBytes[] | 'fileChanged'> {
  if (picked === null) return [];
  try {
    if ((await hashOfFile(picked)) !== logId) return 'fileChanged';
    return [{ sha256: logId, shelf: 'logs', content: { type: 'text/plain', bytes: await picked.arrayBuffer() } }];
  } catch (error) {
    console.warn('log: the file cannot be read again', error);
    return 'fileChanged';
  }
}

/** A stamp that is still being drawn must not be written. */
function stampOf(known: { made: string } | undefined): string | null {
  return known && !isProvisional(known.made) ? known.made : null;
}

export function keptRuns(session: PackSession, logId: string) {
  return session.record.value.tests.runs.filter(({ log }) => log?.logId === logId);
}

function rowsBetween(run: { firstIndex: number; lastIndex: number } | undefined): number {
  return run === undefined ? 0 : run.lastIndex - run.firstIndex + 1;
}

function withoutId<T>(named: Named<T>): T {
  const { id: _id, ...rest } = named;
  return rest as T;
}

/** Names of files can be longer than a line; their end tells them apart as well as their start. */
function shortName(name: string): string {
  return name.length <= MAX_LINE ? name : `${name.slice(0, 80)}…${name.slice(-(MAX_LINE - 81))}`;
}
