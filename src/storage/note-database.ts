import { values } from 'idb-keyval';
import type { PackCard } from '../schema/pack-card.ts';
import type { Database } from './database.ts';
import { type OutsideMarker, writeMarker } from './outside-marker.ts';

/** Notes outside the database that it is here and how many packs it holds; demo packs are no loss. */
export async function noteDatabase(database: Database, { marker, deviceId, nowMs }: Note): Promise<void> {
  const cards = await values<PackCard>(database.useStore('cards'));
  const packCount = cards.filter(({ demo }) => !demo).length;
  writeMarker(marker, { deviceId, packCount, at: new Date(nowMs).toISOString() });
}

interface Note {
  marker: OutsideMarker;
  deviceId: string;
  nowMs: number;
}
