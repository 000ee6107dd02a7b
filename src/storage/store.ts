import type { Entry, EntryKey } from '../schema/entry.ts';
import type { PackCard } from '../schema/pack-card.ts';
import type { PhotoBytes } from '../schema/photo.ts';

/** One change to a pack, written in one transaction: stamps are drawn inside it. */
export interface Change {
  packId: string;
  puts: Put[];
  /** The pack's card after the change; `changedAtMs` is filled in by the store. */
  card: PackCard;
  /** Bytes that come with it: of photos, thumbnails and originals, of logs, of a sheet that is closed, of voice notes. */
  photos?: NewPhotoBytes[];
  /** The definition the record is graded by, kept by hash (with the change that names it). */
  definition?: { sha256: string; text: string };
  /** Words for the undo button, e.g. "Cell vents: weak"; absent for a change that cannot be taken back. */
  undoLabel?: string;
  /** Steps that touched these entries can be taken back no more once this is written. */
  endsUndoOf?: readonly EntriesBeginning[];
}

/** Entries of one subject whose part begins so. */
export interface EntriesBeginning {
  subject: string;
  partBegins: string;
}

/** A value to write, or `gone` for a tombstone. A value that holds `made: null` gets the stamp drawn for it. */
export type Put =
  | { subject: string; part: string; v: unknown; why?: string }
  | { subject: string; part: string; gone: true; why?: string };

/** Where bytes lie, each under its SHA-256; a thumbnail under its photo's. */
export type Shelf = 'photos' | 'thumbs' | 'originals' | 'logs' | 'sealed' | 'voices';

/**
 * Named for what it mostly is; a log's bytes come the same way, at most MAX_LOG_BYTES, and are kept as LOG_TYPE, and so
 * does the JSON of a closed sheet. So do those of a voice note, at most MAX_VOICE_BYTES, kept as what they themselves say
 * they are (voiceTypeOf).
 */
export interface NewPhotoBytes {
  sha256: string;
  shelf: Shelf;
  content: PhotoBytes;
}

/** `detail` is for the log and for tests, not for the screen. */
export type WriteResult =
  | { ok: true; entries: Entry[]; at: string }
  | { ok: false; problem: WriteProblem; detail: string };
/**
 * `old`: another tab runs a newer Underlid on this database; reload. `refused`: a change that no record can hold, however
 * often it is tried.
 */
export type WriteProblem = 'quotaFull' | 'old' | 'closed' | 'failed' | 'refused';

/** Everything the app asks of the database. Made by openStore(). */
export interface Store {
  deviceId: string;
  cards(): Promise<PackCard[]>;
  entriesOf(packId: string): Promise<Entry[]>;
  write(change: Change): Promise<WriteResult>;
  /** The newest step that this tab can take back, or null: its own, or one that stood when it was opened. */
  undoLabel(packId: string): Promise<string | null>;
  /**
   * Rewrites the earlier values with new stamps; returns what was written. `cardOf` computes the card from all entries;
   * `also` is written in the same transaction.
   */
  undo(packId: string, cardOf: (entries: Entry[]) => PackCard, also?: readonly Put[]): Promise<WriteResult>;
  photo(sha256: string, shelf?: Exclude<Shelf, 'logs' | 'sealed' | 'voices'>): Promise<PhotoBytes | null>;
  /** The bytes of a log file as it was taken in. */
  log(sha256: string): Promise<PhotoBytes | null>;
  /** The sealed JSON of a closed sheet. */
  sealed(sha256: string): Promise<PhotoBytes | null>;
  /** What was recorded of a voice note; its type is one of VOICE_TYPES. */
  voice(sha256: string): Promise<PhotoBytes | null>;
  definitionText(sha256: string): Promise<string | null>;
  keepDefinition(sha256: string, text: string): Promise<void>;
  /** Every definition kept here: loaded by hand, come with a bundle, or the one a record is graded by. */
  definitions(): Promise<{ sha256: string; text: string }[]>;
  /** Which packs, put away or not, are, were or by an undo can again be graded by which definition, by its hash. */
  definitionUses(): Promise<Map<string, PackName[]>>;
  /** Takes a definition off this phone unless a pack has such a use for it. */
  removeDefinition(sha256: string): Promise<DefinitionRemoval>;
  /** Takes every trace of a pack off this phone (demo packs; packs removed for good). Bytes used by others stay. */
  erase(packId: string): Promise<void>;
  /** Settings and small device facts that are no part of any record: theme, hand, units, awaited photo, last pack. */
  kept<T>(name: string): Promise<T | null>;
  keep(name: string, value: unknown): Promise<void>;
  /** Calls back when another tab has written this pack; returns how to stop. */
  onOtherTab(callback: (packId: string) => void): () => void;
  /** Calls back when the database can no longer be used: a newer Underlid asked for it, or the browser closed it. */
  onClosed(callback: (because: 'old' | 'closed') => void): () => void;
  /** Merges one pack of a checked bundle by stamp, under the stamps it came with. For restoreBundle. */
  mergeIn(incoming: Incoming): Promise<MergeResult>;
  /** Photos of packs other than demo packs whose bytes never went into a backup. */
  photosInNoBackup(): Promise<number>;
  /** The same of logs, apart, because a log is not a photo and the words say which is meant. */
  logsInNoBackup(): Promise<number>;
  voicesInNoBackup(): Promise<number>;
  /** Notes that these bytes are in a backup, once its file has been handed over; and the file's name, here and outside. */
  noteBackup(hashes: readonly string[], file?: BackupFile): Promise<void>;
  /** The file last handed over; null where none ever was. After a database has vanished, what the note outside says. */
  lastBackup(): Promise<BackupNote | null>;
  close(): void;
}

export type DefinitionRemoval = { ok: true } | { ok: false; usedBy: PackName[] };

export interface PackName {
  packId: string;
  name: string;
  sample: string;
}

/** A part of a bundle, as it was handed over. */
export interface BackupFile {
  fileName: string;
  packCount: number;
}

export interface BackupNote extends BackupFile {
  /** ISO 8601, UTC. */
  at: string;
}

/** Bytes that wait in a checked file. `read` reads and checks them anew, and rejects if they are not what they were. */
export interface IncomingBytes {
  sha256: string;
  shelf: Shelf;
  type: string;
  byteCount: number;
  read(): Promise<Uint8Array<ArrayBuffer>>;
}

/** One pack of a bundle that has passed every check. */
export interface Incoming {
  packId: string;
  entries: readonly Entry[];
  bytes: readonly IncomingBytes[];
  definitions: readonly { sha256: string; text: string }[];
  cardOf(entries: Entry[]): PackCard;
  /** Bring back, with new stamps, what was deleted here after the bundle was made. */
  bringBackDeleted: boolean;
}

export type MergeResult = { ok: true; merged: Merged } | { ok: false; problem: WriteProblem; detail: string };

/** What a merge did to one pack. */
export interface Merged {
  /** Nothing of this pack was here before. */
  added: boolean;
  /** Entries written, brought-back ones included. */
  written: EntryKey[];
  /** Entries of the bundle that stayed out because a newer one stands here. */
  newerHere: EntryKey[];
  /** Entries deleted here after the bundle was made, not brought back. */
  deletedHere: EntryKey[];
  broughtBack: EntryKey[];
  /** Photos of the merged record whose bytes neither came nor are here: they may be in another part. */
  missingPhotos: string[];
  /** The same of logs, of the sealed JSON of closed sheets, and of voice notes. */
  missingLogs: string[];
  missingSealed: string[];
  missingVoices: string[];
}

/** The note outside says there was a database, last seen `since`, and it is empty now. */
export interface Vanished {
  since: string;
  packCount: number;
  lastBackup: BackupNote | null;
}

export type OpenResult =
  | { ok: true; store: Store; vanished: Vanished | null }
  | { ok: false; problem: 'unavailable' | 'newer' | 'migrationFailed' | 'failed'; detail: string };
