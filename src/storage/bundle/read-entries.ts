import * as v from 'valibot';
import { type Ladder, liftEntry } from '../../migrations/lift-entry.ts';
import { keyText } from '../../record/merge-entries.ts';
import { stampMs } from '../../record/stamp-ms.ts';
import { checkEntry } from '../../schema/check-entry.ts';
import { type Entry, entrySchema } from '../../schema/entry.ts';
import { FIRST_IMPOSSIBLE_MS } from './bundle-limits.ts';
import { RefusedBundle } from './zip-directory.ts';

export interface EntriesFile {
  packId: string;
  input: unknown;
  schemaVersion: number;
  ladder: Ladder;
}

/**
 * The entries of one pack, each lifted to the present schema and checked; one that is wrong refuses the bundle.
 *
 * Throws  RefusedBundle
 */
export function readEntries({ packId, input, schemaVersion, ladder }: EntriesFile): Entry[] {
  if (!Array.isArray(input)) throw new RefusedBundle('badEntry', `${packId}: no list of entries`);
  const seen = new Set<string>();
  return input.map((one: unknown, i) => {
    const where = `${packId}, entry ${i + 1}`;
    if (!v.is(entrySchema, one)) throw new RefusedBundle('badEntry', `${where} is malformed`);
    // The shape has just been checked; the cast drops valibot's "or undefined" on optional members.
    const lift = liftEntry(one as Entry, schemaVersion, ladder);
    if (!lift.ok) throw new RefusedBundle('migrationFailed', `${where}: ${lift.detail}`);
    const check = checkEntry(lift.entry);
    if (!check.ok) throw new RefusedBundle('badEntry', `${where}: ${check.reason}`);
    const { key, at } = check.entry;
    if (key[0] !== packId) throw new RefusedBundle('badEntry', `${where} is of another pack`);
    if (seen.has(keyText(key))) throw new RefusedBundle('duplicateEntry', `${where}: ${keyText(key)}`);
    seen.add(keyText(key));
    if (stampMs(at) >= FIRST_IMPOSSIBLE_MS) throw new RefusedBundle('impossibleDate', `${where}: ${at}`);
    return check.entry;
  });
}
