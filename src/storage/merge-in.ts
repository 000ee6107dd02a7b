import { promisifyRequest } from 'idb-keyval';
import { stampMs } from '../record/stamp-ms.ts';
import type { Entry } from '../schema/entry.ts';
import { hashesUsedBy, noteUses, SHELVES } from './byte-uses.ts';
import type { Database } from './database.ts';
import { entriesIn } from './entries-in.ts';
import { rangeUnder } from './pack-range.ts';
import { planMerge } from './plan-merge.ts';
import type { Incoming, IncomingBytes, Merged, Shelf } from './store.ts';
import { clockIn, type Writer } from './stored-clock.ts';

/** Bytes written in one transaction. Our choice: few enough that a phone's memory is not asked for a second copy. */
const BATCH_BYTES = 16 * 1024 * 1024;

const MERGE_STORES = [
  'entries',
  'cards',
  'device',
  'definitions',
  'uses',
  'photos',
  'logs',
  'sealed',
  'voices',
] as const;

/**
 * Merges one pack of a checked bundle: its bytes first, in batches, then everything else in one transaction, so that no
 * record ever points at bytes that are not here. Should it fail, the bytes it had brought are taken away again.
 */
export async function mergeIn(database: Database, incoming: Incoming, writer: Writer): Promise<Merged> {
  const here = await database.transact('readonly', ['entries'], (tx) => entriesIn(tx, incoming.packId));
  const wanted = new Set(hashesUsedBy(afterMerge(here, incoming)));
  const broughtBytes: Shelved[] = [];
  try {
    const absent = await absentIn(
      database,
      incoming.bytes.filter(({ sha256 }) => wanted.has(sha256)),
    );
    for (const batch of batchesOf(absent)) {
      // Outside the transaction, which would end while a file is being read.
      const read = await readAll(batch);
      broughtBytes.push(...(await database.transact('readwrite', [...SHELVES], (tx) => putBatch(tx, read))));
    }
    return await database.transact('readwrite', [...MERGE_STORES], (tx) => mergeEntriesIn(tx, incoming, writer));
  } catch (error) {
    if (database.closedBecause() === null) await takeAway(database, broughtBytes);
    throw error;
  }
}

type Shelved = Pick<IncomingBytes, 'sha256' | 'shelf'>;
type ReadBytes = Shelved & { type: string; bytes: Uint8Array<ArrayBuffer> };

function afterMerge(here: Entry[], incoming: Incoming): Entry[] {
  const { merged, deletedHere } = planMerge(here, incoming.entries);
  return incoming.bringBackDeleted ? [...merged, ...deletedHere] : merged;
}

async function mergeEntriesIn(tx: IDBTransaction, incoming: Incoming, writer: Writer): Promise<Merged> {
  const { packId } = incoming;
  const here = await entriesIn(tx, packId);
  const plan = planMerge(here, incoming.entries);
  const clock = await clockIn(tx, writer);
  for (const { at } of incoming.entries) clock.see(at);
  const back = incoming.bringBackDeleted ? plan.deletedHere : [];
  const broughtBack = back.map((entry) => ({ ...entry, at: clock.draw(), by: writer.deviceId }));
  clock.save();
  const puts = [...plan.puts, ...broughtBack];
  for (const entry of puts) tx.objectStore('entries').put(entry, entry.key);
  for (const { sha256, text } of incoming.definitions) tx.objectStore('definitions').put(text, sha256);

  const all = await entriesIn(tx, packId);
  // A thumbnail that came alone is no backup of its photo.
  const came = new Set(incoming.bytes.filter(({ shelf }) => shelf !== 'thumbs').map(({ sha256 }) => sha256));
  const used = hashesUsedBy(all);
  await noteUses(tx, packId, used);
  await noteUses(
    tx,
    packId,
    used.filter((sha256) => came.has(sha256)),
    writer.nowMs,
  );
  const newest = all
    .map(({ at }) => at)
    .sort()
    .at(-1);
  const card = incoming.cardOf(all);
  tx.objectStore('cards').put(
    { ...card, packId, changedAtMs: newest === undefined ? writer.nowMs : stampMs(newest) },
    packId,
  );
  return {
    added: here.length === 0,
    written: puts.map(({ key }) => key),
    newerHere: plan.newerHere,
    deletedHere: incoming.bringBackDeleted ? [] : plan.deletedHere.map(({ key }) => key),
    broughtBack: broughtBack.map(({ key }) => key),
    missingPhotos: await missingIn(tx, all, { subject: 'photo', shelf: 'photos' }),
    missingLogs: await missingIn(tx, all, { subject: 'log', shelf: 'logs' }),
    missingSealed: await missingIn(tx, all, { subject: 'closing', shelf: 'sealed' }),
    missingVoices: await missingIn(tx, all, { subject: 'voice', shelf: 'voices' }),
  };
}

async function missingIn(
  tx: IDBTransaction,
  entries: Entry[],
  { subject, shelf }: { subject: 'photo' | 'log' | 'closing' | 'voice'; shelf: Shelf },
): Promise<string[]> {
  const bytes = tx.objectStore(shelf);
  const ids = entries.filter(({ key, gone }) => key[1] === subject && !gone).map(({ key }) => key[2]);
  const found = await Promise.all(ids.map((id) => promisifyRequest(bytes.getKey(id))));
  return ids.filter((_, i) => found[i] === undefined);
}

/** Those whose bytes are not here yet: the others need not be read. */
function absentIn(database: Database, all: readonly IncomingBytes[]): Promise<IncomingBytes[]> {
  return database.transact('readonly', [...SHELVES], async (tx) => {
    const keys = await Promise.all(
      all.map(({ shelf, sha256 }) => promisifyRequest(tx.objectStore(shelf).getKey(sha256))),
    );
    return all.filter((_, i) => keys[i] === undefined);
  });
}

function batchesOf(all: readonly IncomingBytes[]): IncomingBytes[][] {
  const batches: IncomingBytes[][] = [];
  let room = 0;
  for (const one of all) {
    const batch = batches.at(-1);
    if (batch !== undefined && one.byteCount <= room) batch.push(one);
    else {
      batches.push([one]);
      room = BATCH_BYTES;
    }
    room -= one.byteCount;
  }
  return batches;
}

async function readAll(batch: readonly IncomingBytes[]): Promise<ReadBytes[]> {
  const found: ReadBytes[] = [];
  for (const { sha256, shelf, type, read } of batch) found.push({ sha256, shelf, type, bytes: await read() });
  return found;
}

/** Returns what was not there before. */
async function putBatch(tx: IDBTransaction, batch: readonly ReadBytes[]): Promise<Shelved[]> {
  const brought: Shelved[] = [];
  for (const { sha256, shelf, type, bytes } of batch) {
    const store = tx.objectStore(shelf);
    if ((await promisifyRequest(store.getKey(sha256))) !== undefined) continue;
    store.put({ type, bytes: bytes.slice().buffer }, sha256);
    brought.push({ sha256, shelf });
  }
  return brought;
}

async function takeAway(database: Database, brought: Shelved[]): Promise<void> {
  await database.transact('readwrite', [...SHELVES, 'uses'], async (tx) => {
    for (const { sha256, shelf } of brought) {
      // Another tab may have begun to use them meanwhile.
      const used = await promisifyRequest(tx.objectStore('uses').count(rangeUnder(sha256)));
      if (used === 0) tx.objectStore(shelf).delete(sha256);
    }
  });
}
