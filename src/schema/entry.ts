import * as v from 'valibot';
import { afterwardsFields } from './afterwards.ts';
import { answerSchema } from './answer.ts';
import { calloutSchema } from './callout.ts';
import { attachmentSchema, closingSchema, reopeningSchema, retestOfSchema } from './closing.ts';
import { definitionReferenceSchema } from './definition-reference.ts';
import { momentMs } from './figure-limits.ts';
import { LIVE_TEST_SUBJECTS } from './live-tests/live-tests.ts';
import { makeSafeSchema } from './make-safe.ts';
import { nameplateFields } from './nameplate.ts';
import { offerSchema } from './offer.ts';
import { LID_OFF_STATES, ROUTES } from './pack-states.ts';
import { photoSchema } from './photo.ts';
import { remedyNoteSchema } from './remedy-note.ts';
import { secondAnswerSchema, secondReaderSchema } from './second-reading.ts';
import { stampSchema } from './stamp.ts';
import { takeMarkSchema, takeSchema } from './take.ts';
import { idSchema, lineSchema, noteSchema, randomIdSchema, sha256Schema } from './text-limits.ts';
import { voiceNoteSchema } from './voice-note.ts';

export type EntryKey = [packId: string, subject: string, part: string];

/** The truth: one value under one key, newest stamp wins. `gone` is a tombstone; its `v` is null. */
export interface Entry {
  key: EntryKey;
  v: unknown;
  at: string;
  by: string;
  why?: string;
  gone?: true;
}

export const entrySchema = v.looseObject({
  key: v.strictTuple([randomIdSchema, idLike(), v.pipe(v.string(), v.minLength(1), v.maxLength(200))]),
  v: v.unknown(),
  at: stampSchema,
  by: randomIdSchema,
  why: v.optional(noteSchema),
  gone: v.optional(v.literal(true)),
});

function idLike() {
  return v.pipe(v.string(), v.regex(/^[a-zA-Z]{1,40}$/, 'must be a word'));
}

/**
 * Checks of an entry's value by subject. Where the part is one of a closed list it is a record of checks by part;
 * otherwise one check serves every part, and `part` says what the part must look like.
 */
export const ENTRY_SUBJECTS = {
  /** `made`: the pack exists; `away`: an invented pack was put away (others by a tombstone). `checklist`: the definition it is graded by. `route`, `keepOriginals`: choices. */
  pack: {
    byPart: {
      made: v.looseObject({ demo: v.optional(v.boolean()), away: v.optional(v.boolean()) }),
      checklist: definitionReferenceSchema,
      /** The definition it was graded by before it was carried over: its score is shown beside. */
      carriedFrom: definitionReferenceSchema,
      route: v.picklist(ROUTES),
      keepOriginals: v.boolean(),
      /** The earlier pack it was begun from. */
      retestOf: retestOfSchema,
    },
  },
  nameplate: { byPart: nameplateFields },
  answer: { part: idSchema, value: answerSchema },
  fact: { part: idSchema, value: v.looseObject({ choice: idSchema, note: v.optional(noteSchema) }) },
  photo: { part: sha256Schema, value: photoSchema },
  /** Part: `<photo id>/<item id>`. */
  photoItem: { part: v.pipe(v.string(), v.regex(/^[0-9a-f]{64}\/[a-z0-9-]+$/)), value: v.literal(true) },
  callout: { part: randomIdSchema, value: calloutSchema },
  makeSafe: { part: randomIdSchema, value: makeSafeSchema },
  /** The lid-off state was entered; `leftBehind` are open items said to be lost before it. */
  state: {
    part: v.picklist(LID_OFF_STATES),
    value: v.looseObject({ enteredAtMs: momentMs, leftBehind: v.array(idSchema) }),
  },
  afterwards: { byPart: afterwardsFields },
  /** Words of the tester's own for the sheet, opinion apart from fact; `makerReply` is the maker's. */
  words: { byPart: { opinion: noteSchema, method: noteSchema, makerReply: noteSchema, signedAs: lineSchema } },
  closing: { part: sha256Schema, value: closingSchema },
  reopening: { part: randomIdSchema, value: reopeningSchema },
  attachment: { part: randomIdSchema, value: attachmentSchema },
  offer: { part: randomIdSchema, value: offerSchema },
  remedyNote: { part: idSchema, value: remedyNoteSchema },
  take: { part: randomIdSchema, value: takeSchema },
  takeMark: { part: v.pipe(v.string(), v.regex(/^[0-9a-f]{32}\/[0-9a-f]{32}$/)), value: takeMarkSchema },
  secondReader: { part: randomIdSchema, value: secondReaderSchema },
  /** Part: `<reader id>/<item id>`. */
  secondAnswer: { part: v.pipe(v.string(), v.regex(/^[0-9a-f]{32}\/[a-z0-9-]+$/)), value: secondAnswerSchema },
  voice: { part: sha256Schema, value: voiceNoteSchema },
  ...LIVE_TEST_SUBJECTS,
} as const;
export type Subject = keyof typeof ENTRY_SUBJECTS;

/**
 * Subjects that stand around a sheet, of it as closed, of a later price, of a film of the work: no part of what is sealed,
 * and writable while it is closed.
 */
export const AROUND_THE_SHEET = [
  'closing',
  'reopening',
  'attachment',
  'offer',
  'take',
  'takeMark',
] as const satisfies readonly Subject[];
