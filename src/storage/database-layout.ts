import { type Ladder, liftEntry } from '../migrations/lift-entry.ts';
import type { Entry } from '../schema/entry.ts';
import type { UndoStep } from './undo-steps.ts';

/**
 * Object stores and their keys, all out of line.
 * entries [pack, subject, part] · cards pack · photos, thumbs, originals, logs, sealed, voices, definitions
 * SHA-256 · undo [pack, stamp] · uses [SHA-256 of bytes, pack] → when they went into a backup, 0 never · kept name · device name.
 */
export const STORES = [
  'entries',
  'cards',
  'photos',
  'thumbs',
  'originals',
  'logs',
  'sealed',
  'voices',
  'definitions',
  'undo',
  'uses',
  'kept',
  'device',
] as const;
export type StoreName = (typeof STORES)[number];

/** Raise it when a store is added; `upgrade` makes whatever is not there yet. 2: logs. 3: sealed. 4: voices. */
const LAYOUT_VERSION = 4;
const LAYOUTS_PER_SCHEMA = 1000;

/**
 * IndexedDB's own version number: schema version × 1000 + layout version. So a tab with an older schema is told to
 * close by the browser, a newer database refuses to open, and lifting is as atomic as the upgrade itself.
 */
export function databaseVersion({ present }: Ladder): number {
  return present * LAYOUTS_PER_SCHEMA + LAYOUT_VERSION;
}

/** Brings a database of version `from` (0: none yet) up to date inside its upgrade transaction. */
export function upgrade(tx: IDBTransaction, { from, ladder, fail }: Upgrade): void {
  for (const name of STORES) {
    if (!tx.db.objectStoreNames.contains(name)) tx.db.createObjectStore(name);
  }
  const schemaVersion = Math.floor(from / LAYOUTS_PER_SCHEMA);
  if (from > 0 && schemaVersion < ladder.present) liftAll(tx, { schemaVersion, ladder, fail });
}

interface Upgrade {
  from: number;
  ladder: Ladder;
  /** Called with the reason before the transaction is aborted. */
  fail(detail: string): void;
}

/** Lifts every entry, and those that steps to take back hold: an update must not cost a way back either. */
function liftAll(
  tx: IDBTransaction,
  { schemaVersion, ladder, fail }: Omit<Upgrade, 'from'> & { schemaVersion: number },
) {
  let failed = false;
  const lifted = (entry: Entry): Entry => {
    const lift = liftEntry(entry, schemaVersion, ladder);
    if (lift.ok) return lift.entry;
    if (!failed) {
      failed = true;
      fail(lift.detail);
      tx.abort();
    }
    return entry;
  };

  const entries = tx.objectStore('entries');
  // All at once, not by cursor: a cursor would meet an entry again that a step has moved to a later key.
  const all: IDBRequest<Entry[]> = entries.getAll();
  all.onsuccess = () => {
    const present = all.result.map(lifted);
    if (failed) return;
    entries.clear();
    for (const entry of present) entries.put(entry, entry.key);
  };

  const steps = tx.objectStore('undo').openCursor();
  steps.onsuccess = () => {
    const { result } = steps;
    if (failed || result === null) return;
    const step = result.value as UndoStep;
    const rows = step.rows.map(({ before, after }) => ({ before: before && lifted(before), after: lifted(after) }));
    if (failed) return;
    result.update({ ...step, rows });
    result.continue();
  };
}
