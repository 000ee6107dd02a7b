import { promisifyRequest } from 'idb-keyval';
import type { Entry } from '../schema/entry.ts';
import type { PackCard } from '../schema/pack-card.ts';
import { rangeUnder } from './pack-range.ts';

/** Counts the photos of packs other than demo packs that never went into a backup, each once. */
export async function photosInNoBackup(tx: IDBTransaction): Promise<number> {
  const cards = await promisifyRequest<PackCard[]>(tx.objectStore('cards').getAll());
  const found = new Set<string>();
  for (const { packId, demo } of cards) {
    if (demo) continue;
    const photos = await promisifyRequest<Entry[]>(tx.objectStore('entries').getAll(rangeUnder(packId, 'photo')));
    for (const { key, gone } of photos) {
      if (gone) continue;
      const backedUpMs = await promisifyRequest<number | undefined>(tx.objectStore('uses').get([key[2], packId]));
      if (!backedUpMs) found.add(key[2]);
    }
  }
  return found.size;
}
