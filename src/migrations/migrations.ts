import type { Entry } from '../schema/entry.ts';
import { withPlainTexts } from '../schema/plain-text.ts';

/**
 * One step lifts an entry from schema `to − 1` to `to`. It is pure, keeps unknown fields, and never touches `at` or
 * `by`: a lifted entry must still merge as the same entry.
 */
export interface Migration {
  to: number;
  step(entry: Entry): Entry;
}

/** In order, without gaps, the last one's `to` being SCHEMA_VERSION. */
export const MIGRATIONS: readonly Migration[] = [
  // 2 adds subjects and a kind of answer and changes none: what version 1 wrote stands as it is.
  { to: 2, step: (entry) => entry },
  // 3 adds subjects and one part of `pack`. Texts are plain from here on: every phone must hold the same under one stamp,
  // and a bundle's are made plain as they come in.
  { to: 3, step: plainEntry },
  // 4 adds subjects and optional fields and changes none.
  { to: 4, step: (entry) => entry },
];

/** A text of nothing but hidden characters becomes U+FFFD: an empty one might not pass its schema and be set aside. */
function plainEntry(entry: Entry): Entry {
  const plain = (value: unknown) => withPlainTexts(value, '\ufffd');
  return { ...entry, v: plain(entry.v), ...(entry.why === undefined ? {} : { why: String(plain(entry.why)) }) };
}
