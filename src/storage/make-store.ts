import { get, promisifyRequest, set, values } from 'idb-keyval';
import { stampMs } from '../record/stamp-ms.ts';
import type { Entry } from '../schema/entry.ts';
import type { PackCard } from '../schema/pack-card.ts';
import type { PhotoBytes } from '../schema/photo.ts';
import { dropUses, noteBackedUp, SHELVES } from './byte-uses.ts';
import type { Database } from './database.ts';
import { definitionsIn, definitionUsesIn, removeDefinitionFrom } from './definitions-in.ts';
import { entriesIn } from './entries-in.ts';
import { type CountedSubject, inNoBackup } from './in-no-backup.ts';
import { LAST_BACKUP, lastBackupIn, noteDatabase } from './note-database.ts';
import type { StoreEnvironment } from './open-store.ts';
import { rangeUnder } from './pack-range.ts';
import type { Store, WriteProblem, WriteResult } from './store.ts';
import { clockIn, type Writer } from './stored-clock.ts';
import { newestLabel, type Tab, takeStepBack } from './undo-steps.ts';

/** The Store over an open database. Reads reject once it is closed; writes say so. What only writes is fetched when first used. */
export function makeStore(database: Database, environment: StoreEnvironment, { deviceId, tab }: Identity): Store {
  const { otherTabs, marker } = environment;
  const writer = (): Writer => ({ deviceId, tabId: tab.id, nowMs: environment.nowMs() });

  /** After the work is done and stands: that it could not be noted outside undoes nothing, and must not say so. */
  const noteMarker = async () => {
    try {
      await noteDatabase(database, { marker, deviceId, nowMs: environment.nowMs() });
    } catch (error) {
      console.warn('store: not noted outside the database', error);
    }
  };
  const countUnsaved = (subject: CountedSubject) =>
    database.transact('readonly', ['entries', 'cards', 'uses'], (tx) => inNoBackup(tx, subject));
  const failure = (error: unknown): Failure => ({ ok: false, ...problemOf(error, database) });

  return {
    deviceId,
    cards: () => values<PackCard>(database.useStore('cards')),
    entriesOf: (packId) => database.transact('readonly', ['entries'], (tx) => entriesIn(tx, packId)),
    write: async (change) => {
      try {
        const { storesOf, writeChange } = await import('./write-change.ts');
        const work = (tx: IDBTransaction) => writeChange(tx, change, writer());
        const { entries, at, isNewPack } = await database.transact('readwrite', storesOf(change), work);
        otherTabs.tell(change.packId);
        if (isNewPack) await noteMarker();
        return { ok: true, entries, at };
      } catch (error) {
        // So writeChange says that a value does not pass its schema.
        if (error instanceof RangeError) return { ok: false, problem: 'refused', detail: String(error) };
        return failure(error);
      }
    },
    undoLabel: (packId) => database.transact('readonly', ['undo'], (tx) => newestLabel(tx, packId, tab)),
    undo: async (packId, cardOf, also = []) => {
      try {
        const { entryOf } = await import('./write-change.ts');
        const more = (at: () => string) => also.map((put) => entryOf(put, packId, at()));
        const work = (tx: IDBTransaction) => undoIn(tx, { packId, cardOf, tab, writer: writer(), more });
        const result = await database.transact('readwrite', ['entries', 'cards', 'undo', 'device'], work);
        if (result === null) return { ok: false, problem: 'failed', detail: 'there is no step to take back' };
        otherTabs.tell(packId);
        return result;
      } catch (error) {
        return failure(error);
      }
    },
    photo: async (sha256, shelf = 'photos') => (await get<PhotoBytes>(sha256, database.useStore(shelf))) ?? null,
    log: async (sha256) => (await get<PhotoBytes>(sha256, database.useStore('logs'))) ?? null,
    sealed: async (sha256) => (await get<PhotoBytes>(sha256, database.useStore('sealed'))) ?? null,
    voice: async (sha256) => (await get<PhotoBytes>(sha256, database.useStore('voices'))) ?? null,
    definitionText: async (sha256) => (await get<string>(sha256, database.useStore('definitions'))) ?? null,
    keepDefinition: (sha256, text) => set(sha256, text, database.useStore('definitions')),
    definitions: () => definitionsIn(database),
    definitionUses: () => definitionUsesIn(database),
    removeDefinition: (sha256) => removeDefinitionFrom(database, sha256),
    erase: async (packId) => {
      await database.transact('readwrite', ['entries', 'cards', 'undo', 'uses', ...SHELVES], async (tx) => {
        tx.objectStore('entries').delete(rangeUnder(packId));
        tx.objectStore('undo').delete(rangeUnder(packId));
        tx.objectStore('cards').delete(packId);
        await dropUses(tx, packId);
      });
      otherTabs.tell(packId);
      await noteMarker();
    },
    kept: async <T>(name: string) => (await get<T>(name, database.useStore('kept'))) ?? null,
    keep: (name, value) => set(name, value, database.useStore('kept')),
    onOtherTab: (callback) => otherTabs.listen(callback),
    onClosed: (callback) => database.onClosed(callback),
    mergeIn: async (incoming) => {
      try {
        const { mergeIn } = await import('./merge-in.ts');
        const merged = await mergeIn(database, incoming, writer());
        otherTabs.tell(incoming.packId);
        if (merged.added) await noteMarker();
        return { ok: true, merged };
      } catch (error) {
        return failure(error);
      }
    },
    photosInNoBackup: () => countUnsaved('photo'),
    logsInNoBackup: () => countUnsaved('log'),
    voicesInNoBackup: () => countUnsaved('voice'),
    noteBackup: async (hashes, file) => {
      const nowMs = environment.nowMs();
      await database.transact('readwrite', ['uses', 'kept'], async (tx) => {
        if (file) tx.objectStore('kept').put({ ...file, at: new Date(nowMs).toISOString() }, LAST_BACKUP);
        await noteBackedUp(tx, hashes, nowMs);
      });
      if (file) await noteMarker();
    },
    lastBackup: () => lastBackupIn(database, marker),
    close: () => {
      otherTabs.close();
      database.close();
    },
  };
}

interface Identity {
  deviceId: string;
  tab: Tab;
}

type Failure = { ok: false; problem: WriteProblem; detail: string };

interface Undo {
  packId: string;
  cardOf(entries: Entry[]): PackCard;
  writer: Writer;
  tab: Tab;
  /** What is written with it, under stamps drawn for it. */
  more(draw: () => string): Entry[];
}

async function undoIn(tx: IDBTransaction, { packId, cardOf, writer, tab, more }: Undo): Promise<WriteResult | null> {
  const clock = await clockIn(tx, writer);
  const taken = await takeStepBack(tx, packId, { clock, tab });
  if (taken === null) return null;
  const also = more(clock.draw);
  for (const entry of also) tx.objectStore('entries').put(entry, entry.key);
  const entries = [...taken, ...also];
  const at = entries.at(-1)?.at ?? clock.draw();
  clock.save();
  const card = cardOf(await promisifyRequest<Entry[]>(tx.objectStore('entries').getAll(rangeUnder(packId))));
  tx.objectStore('cards').put({ ...card, changedAtMs: stampMs(at) }, packId);
  return { ok: true, entries, at };
}

/** What went wrong, in the words of the contract; the browser's own words as detail. */
function problemOf(error: unknown, database: Database): { problem: WriteProblem; detail: string } {
  const detail = String(error);
  if (error instanceof Error && error.name === 'QuotaExceededError') return { problem: 'quotaFull', detail };
  return { problem: database.closedBecause() ?? 'failed', detail };
}
