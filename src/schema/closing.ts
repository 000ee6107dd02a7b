import * as v from 'valibot';
import { countFrom, momentMs } from './figure-limits.ts';
import { stampSchema } from './stamp.ts';
import { daySchema, finiteSchema, lineSchema, noteSchema, randomIdSchema, sha256Schema } from './text-limits.ts';
import { VERDICTS } from './verdict.ts';

const reasonSchema = v.pipe(noteSchema, v.regex(/\S/, 'must say why'));

/**
 * The sheet was closed. The entry's part is the SHA-256 of the sealed JSON (schema/sealed-sheet.ts), whose bytes lie on
 * the shelf `sealed` under that hash.
 */
export const closingSchema = v.looseObject({
  /** 1 for the first; a later one took the place of the one before. */
  revision: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(9999)),
  closedAtMs: momentMs,
  appVersion: lineSchema,
  byteCount: countFrom(1),
  /** SHA-256 of the RFC 8785 text of the sealed entries: tells whether the record still is what was sealed. */
  entriesSha256: sha256Schema,
  /** The sealed JSON it takes the place of, and why it was made; both absent of the first one. */
  after: v.optional(sha256Schema),
  reason: v.optional(reasonSchema),
  /** What it came to, so that revisions can be listed without reading each: as in its sealed figures, never rounded. */
  score: v.nullable(v.looseObject({ low: finiteSchema, high: finiteSchema })),
  verdict: v.looseObject({ low: v.picklist(VERDICTS), high: v.picklist(VERDICTS) }),
  settled: v.boolean(),
});
export type Closing = v.InferOutput<typeof closingSchema>;

/** A closed sheet was opened again, with the reason: changes from here on are the next revision's. Part: a random id. */
export const reopeningSchema = v.looseObject({
  /** The closing (its SHA-256) that was opened. */
  after: sha256Schema,
  reason: reasonSchema,
  openedAtMs: momentMs,
});
export type Reopening = v.InferOutput<typeof reopeningSchema>;

export const ATTACHMENT_KINDS = ['makerReply', 'correction'] as const;

/** A maker's reply or a correction, attached to a closed sheet without opening it. Part: a random id. */
export const attachmentSchema = v.looseObject({
  kind: v.picklist(ATTACHMENT_KINDS),
  text: v.pipe(noteSchema, v.regex(/\S/, 'must say something')),
  from: v.optional(lineSchema),
  /** Day it came in, or was found to be wrong. */
  on: v.optional(daySchema),
  /** The closing (its SHA-256) it speaks of. */
  to: sha256Schema,
  made: stampSchema,
});
export type Attachment = v.InferOutput<typeof attachmentSchema>;

export const RETEST_KINDS = ['sample', 'productRevision'] as const;

/** This pack is another sample, or a new revision of the product, of one tested before. */
export const retestOfSchema = v.looseObject({
  packId: randomIdSchema,
  kind: v.picklist(RETEST_KINDS),
  /** What the earlier pack was called, should it not be on this phone. */
  label: v.optional(lineSchema),
});
export type RetestOf = v.InferOutput<typeof retestOfSchema>;
