import * as v from 'valibot';
import { momentMs } from './figure-limits.ts';
import { gradeSchema } from './grade.ts';
import { stampSchema } from './stamp.ts';
import { idSchema, lineSchema, noteSchema } from './text-limits.ts';

/** Someone else who grades the pack blind, from its photos. Part: a random id. */
export const secondReaderSchema = v.looseObject({
  /** What the sheet calls them, if they want to be named. */
  label: v.optional(lineSchema),
  /** They said that they had not seen the grades. */
  blind: v.optional(v.boolean()),
  finishedAtMs: v.optional(momentMs),
  /** By item id, the first reader's grades as they counted when it was finished: what is changed since, after both were seen, changes no agreement. */
  firstGrades: v.optional(v.record(idSchema, gradeSchema)),
  made: stampSchema,
});
export type SecondReader = v.InferOutput<typeof secondReaderSchema>;

/** What a second reader says of one item. Part: `<reader id>/<item id>`. */
export const secondAnswerSchema = v.variant('kind', [
  v.looseObject({ kind: v.literal('grade'), grade: gradeSchema, note: v.optional(noteSchema) }),
  v.looseObject({ kind: v.literal('doesNotApply'), note: v.optional(noteSchema) }),
  v.looseObject({ kind: v.literal('cannotTell'), note: v.optional(noteSchema) }),
]);
export type SecondAnswer = v.InferOutput<typeof secondAnswerSchema>;
