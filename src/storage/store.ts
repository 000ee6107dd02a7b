import type { Entry } from '../schema/entry.ts';
import type { PackCard } from '../schema/pack-card.ts';
import type { PhotoBytes } from '../schema/photo.ts';

/** One change to a pack, written in one transaction: stamps are drawn inside it. */
export interface Change {
  packId: string;
  puts: Put[];
  /** The pack's card after the change; `changedAtMs` is filled in by the store. */
  card: PackCard;
  /** Bytes of photos, thumbnails and originals that come with it. */
  photos?: NewPhotoBytes[];
  /** The definition the record is graded by, kept by hash (with the change that names it). */
  definition?: { sha256: string; text: string };
  /** Words for the undo button, e.g. "Cell vents: weak"; absent for a change that cannot be taken back. */
  undoLabel?: string;
}

/** A value to write, or `gone` for a tombstone. A value that holds `made: null` gets the stamp drawn for it. */
export type Put =
  | { subject: string; part: string; v: unknown; why?: string }
  | { subject: string; part: string; gone: true; why?: string };

export interface NewPhotoBytes {
  sha256: string;
  shelf: 'photos' | 'thumbs' | 'originals';
  content: PhotoBytes;
}

export type WriteResult = { ok: true; entries: Entry[]; at: string } | { ok: false; problem: WriteProblem };
/** `old`: another tab runs a newer Underlid on this database; reload. */
export type WriteProblem = 'quotaFull' | 'old' | 'closed' | 'failed';

/** Everything the app asks of the database. Made by openStore(). */
export interface Store {
  deviceId: string;
  cards(): Promise<PackCard[]>;
  entriesOf(packId: string): Promise<Entry[]>;
  write(change: Change): Promise<WriteResult>;
  /** The newest step that can be taken back, or null. */
  undoLabel(packId: string): Promise<string | null>;
  /** Rewrites the earlier values with new stamps; returns what was written. `cardOf` computes the card from all entries. */
  undo(packId: string, cardOf: (entries: Entry[]) => PackCard): Promise<WriteResult>;
  photo(sha256: string, shelf?: 'photos' | 'thumbs' | 'originals'): Promise<PhotoBytes | null>;
  definitionText(sha256: string): Promise<string | null>;
  keepDefinition(sha256: string, text: string): Promise<void>;
  /** Takes every trace of a pack off this phone (demo packs; packs removed for good). Photos used by others stay. */
  erase(packId: string): Promise<void>;
  /** Settings and small device facts that are no part of any record: theme, hand, units, awaited photo, last pack. */
  kept<T>(name: string): Promise<T | null>;
  keep(name: string, value: unknown): Promise<void>;
  close(): void;
}

/** How opening went. `vanished`: the marker outside says there was a database, and it is empty now. */
export type OpenResult =
  | { ok: true; store: Store; vanished: { since: string; packCount: number } | null }
  | { ok: false; problem: 'unavailable' | 'newer' | 'migrationFailed' | 'failed'; detail: string };
