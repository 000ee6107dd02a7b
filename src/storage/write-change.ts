import { promisifyRequest } from 'idb-keyval';
import { stampMs } from '../record/stamp-ms.ts';
import { checkEntry } from '../schema/check-entry.ts';
import type { Entry } from '../schema/entry.ts';
import type { PhotoBytes } from '../schema/photo.ts';
import { MAX_VOICE_BYTES } from '../schema/voice-note.ts';
import { MAX_LOG_BYTES } from './bundle/bundle-limits.ts';
import { hashesUsedBy, noteUses } from './byte-uses.ts';
import type { StoreName } from './database-layout.ts';
import { LOG_TYPE } from './log-type.ts';
import { storable } from './storable.ts';
import type { Change, NewPhotoBytes, Put, Shelf } from './store.ts';
import { clockIn, type Writer } from './stored-clock.ts';
import { dropSteps, keepStep } from './undo-steps.ts';
import { voiceTypeOf } from './voice-type.ts';

/** Stores a change touches: bytes and definitions only when it brings some. */
export function storesOf(change: Change): StoreName[] {
  const names: StoreName[] = ['entries', 'cards', 'undo', 'uses', 'device'];
  if (change.definition) names.push('definitions');
  return [...names, ...new Set((change.photos ?? []).map(({ shelf }) => shelf))];
}

/**
 * Writes one change inside one transaction: entries under stamps drawn here, bytes, definition, card, undo step.
 *
 * Throws  RangeError if a value does not pass the schema, the card is another pack's, or a log or a voice note is nothing
 *         that a bundle could bring back: then nothing is written.
 */
export async function writeChange(tx: IDBTransaction, change: Change, writer: Writer): Promise<Written> {
  const { packId, card } = change;
  if (card.packId !== packId) throw new RangeError(`writeChange: the card must be of ${packId}, got ${card.packId}`);
  const clock = await clockIn(tx, writer);
  const written = change.puts.map((put) => entryOf(put, packId, clock.draw()));
  const at = written.at(-1)?.at ?? clock.draw();
  clock.save();

  const entries = tx.objectStore('entries');
  const rows = await Promise.all(
    written.map(async (after) => {
      const before = await promisifyRequest<Entry | undefined>(entries.get(after.key));
      return { before: before ?? null, after };
    }),
  );
  for (const entry of written) entries.put(entry, entry.key);
  await putBytes(tx, change.photos ?? []);
  const brought = (change.photos ?? []).filter(({ shelf }) => shelf !== 'thumbs').map(({ sha256 }) => sha256);
  await noteUses(tx, packId, [...hashesUsedBy(written), ...brought]);
  if (change.definition) tx.objectStore('definitions').put(change.definition.text, change.definition.sha256);
  if (change.undoLabel !== undefined) {
    await keepStep(tx, packId, at, { label: change.undoLabel, rows, tab: writer.tabId });
  }

  if (change.endsUndoOf !== undefined) await dropSteps(tx, packId, change.endsUndoOf);

  const cards = tx.objectStore('cards');
  const isNewPack = (await promisifyRequest(cards.getKey(packId))) === undefined;
  cards.put({ ...card, changedAtMs: stampMs(at) }, packId);
  return { entries: written, at, isNewPack };
}

export interface Written {
  entries: Entry[];
  at: string;
  isNewPack: boolean;
}

/** Bytes never change under their hash, so those that are there are not written again. */
async function putBytes(tx: IDBTransaction, photos: readonly NewPhotoBytes[]): Promise<void> {
  for (const { sha256, shelf, content } of photos) {
    const store = tx.objectStore(shelf);
    const kept = contentOn(shelf, content);
    if ((await promisifyRequest(store.getKey(sha256))) === undefined) store.put(kept, sha256);
  }
}

function contentOn(shelf: Shelf, content: PhotoBytes): PhotoBytes {
  if (shelf === 'logs') return logContent(content);
  return shelf === 'voices' ? voiceContent(content) : content;
}

/** A log that is kept must also fit a bundle, or a backup could never be restored. */
function logContent({ bytes }: PhotoBytes): PhotoBytes {
  if (bytes.byteLength > MAX_LOG_BYTES) {
    throw new RangeError(`writeChange: a log must have at most ${MAX_LOG_BYTES} bytes, got ${bytes.byteLength}`);
  }
  return { type: LOG_TYPE, bytes };
}

/** The same holds of a voice note, and the bytes say what it is, whatever the recorder called it. */
function voiceContent({ bytes }: PhotoBytes): PhotoBytes {
  if (bytes.byteLength > MAX_VOICE_BYTES) {
    throw new RangeError(
      `writeChange: a voice note must have at most ${MAX_VOICE_BYTES} bytes, got ${bytes.byteLength}`,
    );
  }
  const type = voiceTypeOf(new Uint8Array(bytes));
  if (type === null) throw new RangeError('writeChange: a voice note must be WebM, MP4 or Ogg, got other bytes');
  return { type, bytes };
}

export function entryOf(put: Put, packId: string, at: string): Entry {
  const { subject, part, why } = put;
  const gone = 'gone' in put;
  const entry: Entry = {
    key: [packId, subject, part],
    v: gone ? null : withMade(storable(put.v), at),
    at,
    by: at.slice(-32),
    ...(why === undefined ? {} : { why: String(storable(why)) }),
    ...(gone ? { gone: true } : {}),
  };
  const check = checkEntry(entry);
  if (!check.ok) throw new RangeError(`writeChange: ${subject}/${part} must pass its schema, got ${check.reason}`);
  return entry;
}

/** `made: null` stands for the stamp that is only known here. */
function withMade(value: unknown, at: string): unknown {
  const waits = typeof value === 'object' && value !== null && 'made' in value && value.made === null;
  return waits ? { ...value, made: at } : value;
}
