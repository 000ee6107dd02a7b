import { promisifyRequest } from 'idb-keyval';
import { type Ladder, OUR_LADDER } from '../migrations/lift-entry.ts';
import { type Database, openDatabase } from './database.ts';
import { makeStore } from './make-store.ts';
import { noteDatabase } from './note-database.ts';
import { type OtherTabs, otherTabsOver } from './other-tabs.ts';
import { localStorageMarker, type OutsideMarker, readMarker } from './outside-marker.ts';
import type { OpenResult } from './store.ts';
import { newestStampIn } from './stored-clock.ts';

/** Everything the store takes from its surroundings. */
export interface StoreEnvironment {
  /** Of the database, and of the channel between tabs. */
  name: string;
  indexedDB: IDBFactory | undefined;
  nowMs(): number;
  /** 32 random hexadecimal digits. */
  randomId(): string;
  marker: OutsideMarker;
  otherTabs: OtherTabs;
  ladder: Ladder;
}

/** Opens the database and the Store over it; whatever is not given is the browser's own. */
export async function openStore(given: Partial<StoreEnvironment> = {}): Promise<OpenResult> {
  const name = given.name ?? 'underlid';
  const factory = 'indexedDB' in given ? given.indexedDB : browserIndexedDB();
  if (factory === undefined) return { ok: false, problem: 'unavailable', detail: 'there is no IndexedDB here' };
  const ladder = given.ladder ?? OUR_LADDER;
  const opened = await openDatabase(factory, name, ladder);
  if (!opened.ok) return opened;
  const environment: StoreEnvironment = {
    name,
    indexedDB: factory,
    nowMs: given.nowMs ?? Date.now,
    randomId: given.randomId ?? randomId,
    marker: given.marker ?? localStorageMarker(`${name}.database`),
    otherTabs: given.otherTabs ?? otherTabsOver(name),
    ladder,
  };
  try {
    const { deviceId, packCount, openedAt } = await firstLook(opened.database, environment);
    const note = readMarker(environment.marker);
    const vanished = note !== null && note.deviceId !== deviceId && note.packCount > 0 && packCount === 0;
    if (packCount > 0) {
      await noteDatabase(opened.database, { marker: environment.marker, deviceId, nowMs: environment.nowMs() });
    }
    return {
      ok: true,
      store: makeStore(opened.database, environment, { deviceId, tab: { id: environment.randomId(), openedAt } }),
      vanished: vanished ? { since: note.at, packCount: note.packCount, lastBackup: note.lastBackup } : null,
    };
  } catch (error) {
    environment.otherTabs.close();
    opened.database.close();
    return { ok: false, problem: 'failed', detail: String(error) };
  }
}

const DEVICE_ID = 'deviceId';

/** Makes the device id with the database, so that a new database is known by a new id. */
function firstLook(database: Database, { randomId: draw }: StoreEnvironment) {
  return database.transact('readwrite', ['device', 'cards'], async (tx) => {
    const device = tx.objectStore('device');
    const present = await promisifyRequest<string | undefined>(device.get(DEVICE_ID));
    const deviceId = present ?? draw();
    if (present === undefined) device.put(deviceId, DEVICE_ID);
    return {
      deviceId,
      packCount: await promisifyRequest(tx.objectStore('cards').count()),
      openedAt: await newestStampIn(tx),
    };
  });
}

/** 128 random bits as 32 hexadecimal digits. */
export function randomId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Some browsers throw on a mere look at it. */
function browserIndexedDB(): IDBFactory | undefined {
  try {
    return globalThis.indexedDB;
  } catch (error) {
    if (error instanceof DOMException) return undefined;
    throw error;
  }
}
