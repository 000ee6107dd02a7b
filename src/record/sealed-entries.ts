import { checkEntry } from '../schema/check-entry.ts';
import { AROUND_THE_SHEET, type Entry, type EntryKey } from '../schema/entry.ts';
import { canonicalJson } from './canonical-json.ts';
import { mergeEntries } from './merge-entries.ts';

/**
 * The entries of one pack that a closed sheet is sealed with, sorted by key: all but those that speak of the sheet as
 * closed, and those set aside because they do not pass the schema, on which no figure rests.
 */
export function sealedEntries(entries: readonly Entry[]): Entry[] {
  const sealed = entries.filter((entry) => !isAroundTheSheet(entry.key) && checkEntry(entry).ok);
  return mergeEntries(sealed, []);
}

/**
 * RFC 8785 text of the sealed entries, whose SHA-256 (`closing.entriesSha256`) tells whether a record still is what was
 * sealed. Without `pack/made`: a pack that is put away and brought back has not changed.
 */
export function entriesText(entries: readonly Entry[]): string {
  return canonicalJson(sealedEntries(entries).filter(({ key }) => isOfTheSheet(key)));
}

/** Whether an entry under this key says something on the sheet, so that a change of it is a change of the sheet. */
export function isOfTheSheet(key: EntryKey): boolean {
  const [, subject, part] = key;
  return !isAroundTheSheet(key) && !(subject === 'pack' && part === 'made');
}

export function isAroundTheSheet([, subject]: EntryKey): boolean {
  return (AROUND_THE_SHEET as readonly string[]).includes(subject);
}
