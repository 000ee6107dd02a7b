import { foldRecord } from '../../record/fold-record.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import type { Entry } from '../../schema/entry.ts';
import type { Store } from '../store.ts';

/** What of a record has bytes that a closed sheet may rest on. */
export type RecordBytes = Pick<PackRecord, 'photos' | 'voices'> & { tests: Pick<PackRecord['tests'], 'logs'> };

/**
 * Photos, logs and voice notes that a closed sheet of the record rests on and that were deleted since: what was published must stay
 * checkable, so they are backed up for as long as it is. A sealed sheet that cannot be read names none.
 */
export async function deletedSinceSealed(store: Store, record: PackRecord): Promise<RecordBytes> {
  const photos = new Map<string, PackRecord['photos'][number]>();
  const logs = new Map<string, PackRecord['tests']['logs'][number]>();
  const voices = new Map<string, PackRecord['voices'][number]>();
  for (const { sha256 } of record.closings) {
    const sealed = foldRecord(record.packId, entriesIn((await store.sealed(sha256))?.bytes));
    for (const photo of sealed.photos) photos.set(photo.id, photo);
    for (const log of sealed.tests.logs) logs.set(log.id, log);
    for (const voice of sealed.voices) voices.set(voice.id, voice);
  }
  for (const { id } of record.photos) photos.delete(id);
  for (const { id } of record.tests.logs) logs.delete(id);
  for (const { id } of record.voices) voices.delete(id);
  return { photos: [...photos.values()], tests: { logs: [...logs.values()] }, voices: [...voices.values()] };
}

function entriesIn(bytes: ArrayBuffer | undefined): Entry[] {
  if (bytes === undefined) return [];
  try {
    const sealed: unknown = JSON.parse(new TextDecoder().decode(bytes));
    const isWhole = typeof sealed === 'object' && sealed !== null && 'entries' in sealed;
    return isWhole && Array.isArray(sealed.entries) ? sealed.entries.filter(hasKey) : [];
  } catch (error) {
    console.warn('backup: a sealed sheet is not readable', error);
    return [];
  }
}

/** The fold checks the rest of each. */
function hasKey(entry: unknown): entry is Entry {
  if (typeof entry !== 'object' || entry === null || !('key' in entry) || !('at' in entry)) return false;
  const { key, at } = entry;
  return (
    typeof at === 'string' && Array.isArray(key) && key.length === 3 && key.every((one) => typeof one === 'string')
  );
}
