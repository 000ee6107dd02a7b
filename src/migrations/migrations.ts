import type { Entry } from '../schema/entry.ts';

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
  // 3 adds subjects and one part of `pack`, and changes none.
  { to: 3, step: (entry) => entry },
];
