import type { UseStore } from 'idb-keyval';
import type { Ladder } from '../migrations/lift-entry.ts';
import { databaseVersion, type StoreName, upgrade } from './database-layout.ts';

/** An open database: idb-keyval's own shape over each store, and transactions over several at once. */
export interface Database {
  useStore(name: StoreName): UseStore;
  /** Runs `work` in one transaction; resolves when it has completed, rejects when it has left nothing behind. */
  transact<T>(mode: IDBTransactionMode, names: StoreName[], work: (tx: IDBTransaction) => T | Promise<T>): Promise<T>;
  /** Why it can no longer be used; null while it can. `old`: a newer tab asked for the database; `closed`: it was cut off or deleted. */
  closedBecause(): 'old' | 'closed' | null;
  /** Calls back once it can no longer be used, unless it was closed from here; returns how to stop listening. */
  onClosed(callback: (because: 'old' | 'closed') => void): () => void;
  close(): void;
}

export type OpenDatabase =
  | { ok: true; database: Database }
  | { ok: false; problem: 'unavailable' | 'newer' | 'migrationFailed' | 'failed'; detail: string };

/** Opens the database `name`, upgrading it as the ladder says. */
export function openDatabase(factory: IDBFactory, name: string, ladder: Ladder): Promise<OpenDatabase> {
  return new Promise((resolve) => {
    let request: IDBOpenDBRequest;
    try {
      request = factory.open(name, databaseVersion(ladder));
    } catch (error) {
      resolve({ ok: false, problem: 'unavailable', detail: String(error) });
      return;
    }
    let liftFailure: string | null = null;
    let blocked = false;
    request.onupgradeneeded = ({ oldVersion }) => {
      const fail = (detail: string) => {
        liftFailure = detail;
      };
      if (request.transaction !== null) upgrade(request.transaction, { from: oldVersion, ladder, fail });
    };
    request.onblocked = () => {
      blocked = true;
      resolve({ ok: false, problem: 'failed', detail: 'another tab holds an older version of the database open' });
    };
    request.onerror = () => {
      if (liftFailure !== null) resolve({ ok: false, problem: 'migrationFailed', detail: liftFailure });
      else resolve(openingFailed(request.error));
    };
    request.onsuccess = () => {
      if (blocked) request.result.close();
      else resolve({ ok: true, database: databaseOver(request.result) });
    };
  });
}

function openingFailed(error: DOMException | null): OpenDatabase {
  const detail = String(error);
  if (error?.name === 'VersionError') return { ok: false, problem: 'newer', detail };
  // Private windows of some browsers refuse with one of these.
  const unavailable = error?.name === 'SecurityError' || error?.name === 'InvalidStateError';
  return { ok: false, problem: unavailable ? 'unavailable' : 'failed', detail };
}

function databaseOver(db: IDBDatabase): Database {
  let because: 'old' | 'closed' | null = null;
  const listeners = new Set<(because: 'old' | 'closed') => void>();
  const lose = (why: 'old' | 'closed') => {
    if (because !== null) return;
    because = why;
    for (const listener of listeners) listener(why);
  };
  db.onversionchange = ({ newVersion }) => {
    // Null: somebody deletes the database. Nobody newer has it then.
    lose(newVersion === null ? 'closed' : 'old');
    db.close();
  };
  db.onclose = () => lose('closed');
  const transact: Database['transact'] = async (mode, names, work) => {
    if (because !== null) throw new Error(`the database is closed (${because})`);
    const tx = db.transaction(names, mode, { durability: mode === 'readonly' ? 'default' : 'strict' });
    const ended = endOf(tx);
    let result: Awaited<ReturnType<typeof work>>;
    try {
      result = await work(tx);
    } catch (error) {
      abortIfRunning(tx);
      await ended;
      // A full disk aborts the transaction under `work`, which then sees only an AbortError.
      throw tx.error ?? error;
    }
    if ((await ended) === 'aborted') throw tx.error ?? new Error('the transaction was aborted');
    return result;
  };
  return {
    transact,
    useStore: (name) => (mode, callback) => transact(mode, [name], async (tx) => callback(tx.objectStore(name))),
    closedBecause: () => because,
    onClosed: (callback) => {
      listeners.add(callback);
      return () => listeners.delete(callback);
    },
    close: () => {
      because ??= 'closed';
      db.close();
    },
  };
}

/** Listeners, not `on…` properties: idb-keyval sets those itself. */
function endOf(tx: IDBTransaction): Promise<'completed' | 'aborted'> {
  return new Promise((resolve) => {
    tx.addEventListener('complete', () => resolve('completed'));
    tx.addEventListener('abort', () => resolve('aborted'));
  });
}

function abortIfRunning(tx: IDBTransaction): void {
  try {
    tx.abort();
  } catch (error) {
    // Already ended or aborting: nothing left to stop.
    if (!(error instanceof Error && error.name === 'InvalidStateError')) throw error;
  }
}
