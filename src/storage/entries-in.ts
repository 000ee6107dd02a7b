import { promisifyRequest } from 'idb-keyval';
import type { Entry } from '../schema/entry.ts';
import { rangeUnder } from './pack-range.ts';

/** Every entry of one pack, within a transaction. */
export function entriesIn(tx: IDBTransaction, packId: string): Promise<Entry[]> {
  return promisifyRequest<Entry[]>(tx.objectStore('entries').getAll(rangeUnder(packId)));
}
