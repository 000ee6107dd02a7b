import { get, values } from 'idb-keyval';
import type { PackCard } from '../schema/pack-card.ts';
import type { Database } from './database.ts';
import { type OutsideMarker, readMarker, writeMarker } from './outside-marker.ts';
import type { BackupNote } from './store.ts';

/** Name of the note of the last backup in the store `kept`. */
export const LAST_BACKUP = 'lastBackup';

/** Notes outside the database that it is here, how many packs it holds and its last backup; demo packs are no loss. */
export async function noteDatabase(database: Database, { marker, deviceId, nowMs }: Note): Promise<void> {
  const cards = await values<PackCard>(database.useStore('cards'));
  const packCount = cards.filter(({ demo }) => !demo).length;
  const lastBackup = await lastBackupIn(database, marker);
  writeMarker(marker, { deviceId, packCount, at: new Date(nowMs).toISOString(), lastBackup });
}

/** The database's own note; in a new one that of the database that vanished: its file is still the one to look for. */
export async function lastBackupIn(database: Database, marker: OutsideMarker): Promise<BackupNote | null> {
  const kept = await get<BackupNote>(LAST_BACKUP, database.useStore('kept'));
  return kept ?? readMarker(marker)?.lastBackup ?? null;
}

interface Note {
  marker: OutsideMarker;
  deviceId: string;
  nowMs: number;
}
