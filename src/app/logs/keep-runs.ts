import type { Named } from '../../schema/live-tests/live-tests.ts';
import type { Run } from '../../schema/live-tests/run.ts';
import { MAX_LINE } from '../../schema/text-limits.ts';
import { randomId } from '../../storage/open-store.ts';
import type { Put } from '../../storage/store.ts';
import { logWords as say } from '../../text/logs/log.ts';
import type { PackSession } from '../state/pack-session.ts';
import { isProvisional } from '../state/provisional.ts';
import type { LogInHand } from './log-in-hand.ts';
import { matchedRuns, readAgain } from './read-again.ts';
import { CURVE_POINTS, runFromLog } from './run-from-log.ts';

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

/** Log, runs and bytes in one transaction. False if it could not be written; it then waits to be tried again. */
export async function keepRuns(session: PackSession, log: LogInHand, instrumentId: string | null): Promise<boolean> {
  const read = log.read.value;
  if (read === null) return false;
  const { logId, name, bytes } = log.file;
  const { summary, mapping } = read;
  const { updated, added } = keepPlan(session, log);
  const places = [...new Set([...updated.values(), ...added])];
  const fresh = new Map(
    await Promise.all(
      places.map(async (place) => {
        const curve = await log.curve(place, CURVE_POINTS);
        const run = runFromLog({
          ...summary,
          rowCount: rowsBetween(summary.runs[place]),
          place,
          curve,
          logId,
          mapping,
        });
        return [place, run] as const;
      }),
    ),
  );
  const { tests } = session.record.value;
  const known = tests.logs.find(({ id }) => id === logId);
  const { id: _id, ...knownFields } = known ?? { id: '' };
  const instrument = instrumentId === null ? {} : { instrumentId };
  const puts: Put[] = [
    {
      subject: 'log',
      part: logId,
      v: {
        ...knownFields,
        name: known?.name ?? shortName(name),
        byteCount: bytes.byteLength,
        rowCount: summary.rowCount,
        ...instrument,
        made: known && !isProvisional(known.made) ? known.made : null,
      },
    },
  ];
  for (const [id, place] of updated) {
    const stored = tests.runs.find((run) => run.id === id);
    const run = fresh.get(place);
    if (stored === undefined || run === undefined) continue;
    const v = readAgain(withoutId(stored), run);
    puts.push({ subject: 'run', part: id, v: { ...v, made: isProvisional(stored.made) ? null : stored.made } });
  }
  // Written together they are made at one stamp, and their ids alone order them: as they stand in the log.
  const ids = added.map(() => randomId()).toSorted();
  for (const [at, place] of added.entries()) {
    const part = ids[at] ?? randomId();
    puts.push({ subject: 'run', part, v: { ...fresh.get(place), ...instrument, made: null } });
  }
  return session.put({
    puts,
    photos: [{ sha256: logId, shelf: 'logs', content: { type: 'text/plain', bytes } }],
    undoLabel: say.kept(shortName(name), places.length),
  });
}

export function keptRuns(session: PackSession, logId: string) {
  return session.record.value.tests.runs.filter(({ log }) => log?.logId === logId);
}

function rowsBetween(run: { firstIndex: number; lastIndex: number } | undefined): number {
  return run === undefined ? 0 : run.lastIndex - run.firstIndex + 1;
}

function withoutId(run: Named<Run>): Run {
  const { id: _id, ...rest } = run;
  return rest;
}

/** Names of files can be longer than a line; their end tells them apart as well as their start. */
function shortName(name: string): string {
  return name.length <= MAX_LINE ? name : `${name.slice(0, 80)}…${name.slice(-(MAX_LINE - 81))}`;
}
