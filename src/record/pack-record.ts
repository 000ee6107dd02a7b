import type { Afterwards } from '../schema/afterwards.ts';
import type { Answer } from '../schema/answer.ts';
import type { Callout } from '../schema/callout.ts';
import type { Attachment, Closing, Reopening, RetestOf } from '../schema/closing.ts';
import type { DefinitionReference } from '../schema/definition-reference.ts';
import type { LiveTests, Named } from '../schema/live-tests/live-tests.ts';
import type { MakeSafe } from '../schema/make-safe.ts';
import type { Nameplate } from '../schema/nameplate.ts';
import type { Offer } from '../schema/offer.ts';
import type { LidOffState, Route } from '../schema/pack-states.ts';
import type { Photo } from '../schema/photo.ts';
import type { RemedyNote } from '../schema/remedy-note.ts';
import type { SecondAnswer, SecondReader } from '../schema/second-reading.ts';
import type { Take, TakeMark } from '../schema/take.ts';
import type { VoiceNote } from '../schema/voice-note.ts';

/** A callout as folded: its id, and its number among the leaders of its photo (null for kinds that carry none). */
export type RecordCallout = Callout & { id: string; number: number | null };

/** A photo as folded: the items it is linked to (definition order is not known here: sorted by id) and its callouts. */
export type RecordPhoto = Photo & { id: string; itemIds: string[]; callouts: RecordCallout[] };

export type RecordTake = Named<Take> & { marks: readonly Named<TakeMark>[] };
export type RecordSecondReader = Named<SecondReader> & {
  /** By item id. */
  answers: Readonly<Record<string, SecondAnswer>>;
};

/** How the sheet stands: never closed, closed, or opened again since. `sha256` names the sealed JSON. */
export type SheetStanding =
  | { now: 'open' }
  | { now: 'closed'; sha256: string; revision: number }
  | { now: 'revising'; sha256: string; revision: number; reason: string; openedAtMs: number };

/** One pack as its entries say it stands. Made by foldRecord; nothing in it is invented: absent stays absent. */
export interface PackRecord {
  packId: string;
  /** False when the pack has no `made` entry or it was put away. */
  here: boolean;
  demo: boolean;
  checklist: DefinitionReference | null;
  /** The definition it was graded by before it was carried over; null if it never was. */
  carriedFrom: DefinitionReference | null;
  retestOf: RetestOf | null;
  route: Route;
  keepOriginals: boolean;
  nameplate: Nameplate;
  /** By item id. */
  answers: Readonly<Record<string, Answer>>;
  /** By fact id, the id of the choice. */
  facts: Readonly<Record<string, string>>;
  /** In the order in which they were made. */
  photos: RecordPhoto[];
  tests: LiveTests;
  /** In the order in which they were passed. */
  makeSafe: MakeSafe[];
  /** When each state of Lid off was entered; the furthest one entered is the present state. */
  states: { [S in LidOffState]?: { enteredAtMs: number; leftBehind: string[] } };
  /** `null` until the lid comes off. */
  state: LidOffState | null;
  afterwards: Afterwards;
  words: { opinion?: string; method?: string; makerReply?: string; signedAs?: string };
  /** In the order in which they were closed. */
  closings: (Closing & { sha256: string })[];
  /** In the order in which they were opened. */
  reopenings: (Reopening & { id: string })[];
  /** In the order in which they were made. */
  attachments: (Attachment & { id: string })[];
  sheet: SheetStanding;
  /** Prices and options, in the order in which they were made. */
  offers: readonly Named<Offer>[];
  /** By remedy id. */
  remedyNotes: Readonly<Record<string, RemedyNote>>;
  /** In the order in which they were begun, each with its marks in order of time. */
  takes: readonly RecordTake[];
  /** In the order in which they began. */
  secondReaders: readonly RecordSecondReader[];
  /** In the order in which they were made; `id` is the SHA-256 of the bytes. */
  voices: readonly Named<VoiceNote>[];
  /** Stamp of the newest entry; null of an empty record. */
  newestAt: string | null;
  /** Stamp of the newest entry among those a closed sheet is sealed with: what is attached later does not date a sheet. */
  sheetAt: string | null;
  /** Entries whose value did not pass the schema: set aside, never folded in. Key and reason. */
  setAside: { key: string; reason: string }[];
}
