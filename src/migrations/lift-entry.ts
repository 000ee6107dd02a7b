import type { Entry } from '../schema/entry.ts';
import { SCHEMA_VERSION } from '../schema/schema-version.ts';
import { MIGRATIONS, type Migration } from './migrations.ts';

/** `newer`: made by a newer version than this app. `failed`: a step threw or broke its promise. */
export type Lift = { ok: true; entry: Entry } | { ok: false; problem: 'newer' | 'failed'; detail: string };

export interface Ladder {
  steps: readonly Migration[];
  /** Version the last step leads to. */
  present: number;
}

export const OUR_LADDER: Ladder = { steps: MIGRATIONS, present: SCHEMA_VERSION };

/**
 * Lifts one entry from schema version `from` to the present one, a step at a time. The entry given is never changed.
 *
 * Throws  RangeError if `from` is no version or the ladder has a gap.
 * Check   tests/migrations/lift-entry.test.ts
 */
export function liftEntry(entry: Entry, from: number, { steps, present }: Ladder = OUR_LADDER): Lift {
  if (!Number.isInteger(from) || from < 1) throw new RangeError(`liftEntry: from must be 1 or more, got ${from}`);
  if (from > present) {
    return { ok: false, problem: 'newer', detail: `made by schema version ${from}, this app knows ${present}` };
  }
  let lifted = entry;
  for (let to = from + 1; to <= present; to += 1) {
    const migration = steps.find((candidate) => candidate.to === to);
    if (migration === undefined) throw new RangeError(`liftEntry: the ladder must have a step to ${to}`);
    try {
      lifted = migration.step(copyOf(lifted));
    } catch (error) {
      return { ok: false, problem: 'failed', detail: `step ${to} on ${entry.key.join('/')}: ${String(error)}` };
    }
    if (lifted.at !== entry.at || lifted.by !== entry.by) {
      return { ok: false, problem: 'failed', detail: `step ${to} changed the stamp of ${entry.key.join('/')}` };
    }
  }
  return { ok: true, entry: lifted };
}

/** Entries are plain JSON, so a step may write to its copy without reaching the original. */
function copyOf(entry: Entry): Entry {
  return JSON.parse(JSON.stringify(entry)) as Entry;
}
