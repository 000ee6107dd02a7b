import { promisifyRequest } from 'idb-keyval';
import type { Entry } from '../schema/entry.ts';
import { rangeUnder } from './pack-range.ts';
import type { Shelf } from './store.ts';

/** Stores that hold bytes by hash. A thumbnail lies under its photo's hash, an original under its own. */
export const SHELVES = [
  'photos',
  'thumbs',
  'originals',
  'logs',
  'sealed',
  'voices',
] as const satisfies readonly Shelf[];

const WITH_BYTES: readonly string[] = ['photo', 'log', 'closing', 'voice'];

/**
 * The bytes a pack needs because of these entries: photos, their originals, logs, sealed sheets, voice notes. Tombstones
 * need none, but in a pack that was closed: an earlier revision may show what was deleted since.
 */
export function hashesUsedBy(entries: readonly Entry[]): string[] {
  const wasClosed = entries.some(({ key, gone }) => key[1] === 'closing' && !gone);
  return entries.flatMap(({ key, v, gone }) => {
    const [, subject, part] = key;
    if (!WITH_BYTES.includes(subject)) return [];
    if (gone) return wasClosed ? [part] : [];
    const kept = subject === 'photo' ? (v as { keptOriginal?: string }).keptOriginal : undefined;
    return kept === undefined ? [part] : [part, kept];
  });
}

/** Notes that a pack uses these bytes; `backedUpMs` 0 leaves an earlier note of a backup standing. */
export async function noteUses(tx: IDBTransaction, packId: string, hashes: Iterable<string>, backedUpMs = 0) {
  const uses = tx.objectStore('uses');
  for (const sha256 of new Set(hashes)) {
    const before = await promisifyRequest<number | undefined>(uses.get([sha256, packId]));
    if (before === undefined || backedUpMs > before) uses.put(backedUpMs, [sha256, packId]);
  }
}

/** Takes away a pack's uses, and the bytes no other pack uses. Bytes of tombstoned photos go here, not before. */
export async function dropUses(tx: IDBTransaction, packId: string): Promise<void> {
  const uses = tx.objectStore('uses');
  const keys = (await promisifyRequest(uses.getAllKeys())) as [sha256: string, packId: string][];
  const others = new Set(keys.filter(([, user]) => user !== packId).map(([sha256]) => sha256));
  for (const [sha256, user] of keys) {
    if (user !== packId) continue;
    uses.delete([sha256, packId]);
    if (!others.has(sha256)) for (const shelf of SHELVES) tx.objectStore(shelf).delete(sha256);
  }
}

/** Notes that these bytes went into a backup, for every pack that uses them. */
export async function noteBackedUp(tx: IDBTransaction, hashes: readonly string[], nowMs: number): Promise<void> {
  const uses = tx.objectStore('uses');
  for (const sha256 of hashes) {
    for (const key of await promisifyRequest(uses.getAllKeys(rangeUnder(sha256)))) uses.put(nowMs, key);
  }
}
