import type { LogRun } from '../../logs/log-run.ts';
import type { Named } from '../../schema/live-tests/live-tests.ts';
import type { Run } from '../../schema/live-tests/run.ts';
import { canBeKept } from './found-run.ts';
import type { ReadRun, SaidByLog } from './run-from-log.ts';

/** Always from the log: a newer reading takes their place. */
const MEASURED = [
  'chargeAh',
  'energyWh',
  'durationS',
  'currentA',
  'meanVoltageV',
  'startVoltageV',
  'endVoltageV',
  'log',
  'curve',
  'evidence',
] as const satisfies readonly (keyof Run)[];
/** From the log unless a person has said otherwise. */
const SAID = ['on', 'end', 'restMin', 'cellStartDegC', 'cellEndDegC'] as const satisfies readonly (keyof SaidByLog)[];

/** A kept run with what its log says when read anew. What a person typed stays, and so does its place among the runs. */
export function readAgain(stored: Run, fresh: ReadRun): Run {
  const before: Readonly<Record<string, unknown>> = stored.log?.said ?? {};
  const kept: Record<string, unknown> = { ...stored };
  const read: Record<string, unknown> = { ...fresh };
  for (const key of MEASURED) {
    delete kept[key];
    if (read[key] !== undefined) kept[key] = read[key];
  }
  for (const key of SAID) {
    if (stored[key] !== before[key]) continue;
    delete kept[key];
    if (read[key] !== undefined) kept[key] = read[key];
  }
  return kept as Run;
}

/**
 * Which found run each kept run of a log is, by the lines they share, the most first. Kept runs that share lines with
 * none that can be kept are missing from the result.
 */
export function matchedRuns(kept: readonly Named<Run>[], found: readonly LogRun[]): Map<string, number> {
  const pairs = kept.flatMap((run) =>
    [...found.entries()]
      .filter(([, one]) => canBeKept(one))
      .map(([place, one]) => ({ id: run.id, place, shared: sharedLines(run, one) }))
      .filter(({ shared }) => shared > 0),
  );
  const matched = new Map<string, number>();
  const taken = new Set<number>();
  for (const { id, place } of pairs.toSorted((one, other) => other.shared - one.shared)) {
    if (matched.has(id) || taken.has(place)) continue;
    matched.set(id, place);
    taken.add(place);
  }
  return matched;
}

function sharedLines({ log }: Run, { firstLine, lastLine }: LogRun): number {
  if (log === undefined) return 0;
  return Math.min(log.lastLine, lastLine) - Math.max(log.firstLine, firstLine) + 1;
}
