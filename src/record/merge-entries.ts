import type { Entry, EntryKey } from '../schema/entry.ts';
import { canonicalJson } from './canonical-json.ts';

/**
 * Merges two sets of entries: per key the newest stamp wins, tombstones like any other. Commutative, associative and
 * idempotent, so tabs, restores and later exchanges may come in any order. Sorted by key.
 */
export function mergeEntries(a: readonly Entry[], b: readonly Entry[]): Entry[] {
  const byKey = new Map<string, Entry>();
  for (const entry of [...a, ...b]) {
    const key = keyText(entry.key);
    const present = byKey.get(key);
    byKey.set(key, present === undefined ? entry : winnerOf(present, entry));
  }
  return [...byKey.values()].sort((x, y) => compareKeys(x.key, y.key));
}

/**
 * Of two entries under one key: the newer stamp; should they meet, the greater RFC 8785 text of the value; should even
 * that be equal, of the whole entry (a value of null against a tombstone).
 */
export function winnerOf(a: Entry, b: Entry): Entry {
  if (a.at !== b.at) return a.at > b.at ? a : b;
  const [valueA, valueB] = [canonicalJson(a.v), canonicalJson(b.v)];
  if (valueA !== valueB) return valueA > valueB ? a : b;
  return canonicalJson(a) >= canonicalJson(b) ? a : b;
}

/** An entry's key as one text, for maps and messages. No part can forge another's: subjects hold letters only. */
export function keyText([packId, subject, part]: EntryKey): string {
  return `${packId}/${subject}/${part}`;
}

function compareKeys(a: EntryKey, b: EntryKey): number {
  for (const i of [0, 1, 2] as const) {
    if (a[i] !== b[i]) return a[i] < b[i] ? -1 : 1;
  }
  return 0;
}
