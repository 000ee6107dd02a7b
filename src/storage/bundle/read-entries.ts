import * as v from 'valibot';
import { type Ladder, liftEntry } from '../../migrations/lift-entry.ts';
import { keyText } from '../../record/merge-entries.ts';
import { stampMs } from '../../record/stamp-ms.ts';
import { checkEntry } from '../../schema/check-entry.ts';
import { type Entry, type EntryKey, entrySchema } from '../../schema/entry.ts';
import { hiddenCharacters, hiddenPlaces, withPlainTexts } from '../../schema/plain-text.ts';
import { FIRST_IMPOSSIBLE_MS } from './bundle-limits.ts';
import { RefusedBundle } from './refused-bundle.ts';

export interface EntriesFile {
  packId: string;
  input: unknown;
  schemaVersion: number;
  ladder: Ladder;
}

/** A text out of which hidden characters were taken: of which entry, where in its value, and which ("U+202E"). */
export interface TextChange {
  key: EntryKey;
  place: string;
  characters: string[];
}

export interface ReadEntries {
  entries: Entry[];
  textChanges: TextChange[];
}

/**
 * The entries of one pack, each lifted to the present schema, its texts made plain, and checked; one that is wrong refuses
 * the bundle.
 *
 * Throws  RefusedBundle
 */
export function readEntries({ packId, input, schemaVersion, ladder }: EntriesFile): ReadEntries {
  if (!Array.isArray(input)) throw new RefusedBundle('badEntry', `${packId}: no list of entries`);
  const seen = new Set<string>();
  const textChanges: TextChange[] = [];
  const entries = input.map((one: unknown, i) => {
    const where = `${packId}, entry ${i + 1}`;
    if (!v.is(entrySchema, one)) throw new RefusedBundle('badEntry', `${where} is malformed`);
    // The shape has just been checked; the cast drops valibot's "or undefined" on optional members.
    textChanges.push(...hiddenIn(one as Entry));
    const lift = liftEntry(one as Entry, schemaVersion, ladder);
    if (!lift.ok) throw new RefusedBundle('migrationFailed', `${where}: ${lift.detail}`);
    const check = checkEntry(madePlain(lift.entry));
    if (!check.ok) throw new RefusedBundle('badEntry', `${where}: ${check.reason}`);
    const { key, at } = check.entry;
    if (key[0] !== packId) throw new RefusedBundle('badEntry', `${where} is of another pack`);
    if (hiddenCharacters(key[2]).length > 0) throw new RefusedBundle('badEntry', `${where} has a name that hides`);
    if (seen.has(keyText(key))) throw new RefusedBundle('duplicateEntry', `${where}: ${keyText(key)}`);
    seen.add(keyText(key));
    if (stampMs(at) >= FIRST_IMPOSSIBLE_MS) throw new RefusedBundle('impossibleDate', `${where}: ${at}`);
    return check.entry;
  });
  return { entries, textChanges };
}

/** Carriage returns are line ends of another system: changed, but nothing to tell. */
function hiddenIn({ key, v: value, why }: Entry): TextChange[] {
  return [...hiddenPlaces(value), ...hiddenPlaces(why, 'why')].flatMap(({ place, characters: all }) => {
    const characters = all.filter((character) => character !== 'U+000D');
    return characters.length === 0 ? [] : [{ key, place, characters }];
  });
}

function madePlain(entry: Entry): Entry {
  const { v: value, why } = entry;
  if (hiddenPlaces([value, why]).length === 0) return entry;
  return { ...entry, v: withPlainTexts(value), ...(why === undefined ? {} : { why: String(withPlainTexts(why)) }) };
}
