import { promisifyRequest } from 'idb-keyval';
import type { Entry } from '../schema/entry.ts';
import type { PackCard } from '../schema/pack-card.ts';
import { rangeUnder } from './pack-range.ts';

/** What is counted, each apart: the words say which is meant. */
export type CountedSubject = 'photo' | 'log' | 'voice';

/** Counts the photos, logs or voice notes of packs other than demo packs that never went into a backup, each once. */
export async function inNoBackup(tx: IDBTransaction, subject: CountedSubject): Promise<number> {
  const cards = await promisifyRequest<PackCard[]>(tx.objectStore('cards').getAll());
  const backedUp = await backedUpIn(tx);
  const found = new Set<string>();
  for (const { packId, demo } of cards) {
    if (demo) continue;
    const entries = await promisifyRequest<Entry[]>(tx.objectStore('entries').getAll(rangeUnder(packId, subject)));
    for (const { key, gone } of entries) {
      if (!gone && !backedUp.has(`${key[2]}/${packId}`)) found.add(key[2]);
    }
  }
  return found.size;
}

/** `<SHA-256>/<pack>` of what went into a backup, in two requests however many there are: the Bench waits for this. */
async function backedUpIn(tx: IDBTransaction): Promise<Set<string>> {
  const uses = tx.objectStore('uses');
  const keys = (await promisifyRequest(uses.getAllKeys())) as [sha256: string, packId: string][];
  const times = await promisifyRequest<number[]>(uses.getAll());
  return new Set(keys.filter((_, i) => (times[i] ?? 0) > 0).map(([sha256, packId]) => `${sha256}/${packId}`));
}
