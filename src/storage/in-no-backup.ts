import { promisifyRequest } from 'idb-keyval';
import type { Entry } from '../schema/entry.ts';
import type { PackCard } from '../schema/pack-card.ts';
import { rangeUnder } from './pack-range.ts';

/** Counts the photos, or logs, of packs other than demo packs that never went into a backup, each once. */
export async function inNoBackup(tx: IDBTransaction, subject: 'photo' | 'log'): Promise<number> {
  const cards = await promisifyRequest<PackCard[]>(tx.objectStore('cards').getAll());
  const found = new Set<string>();
  for (const { packId, demo } of cards) {
    if (demo) continue;
    const entries = await promisifyRequest<Entry[]>(tx.objectStore('entries').getAll(rangeUnder(packId, subject)));
    for (const { key, gone } of entries) {
      if (gone) continue;
      const backedUpMs = await promisifyRequest<number | undefined>(tx.objectStore('uses').get([key[2], packId]));
      if (!backedUpMs) found.add(key[2]);
    }
  }
  return found.size;
}
