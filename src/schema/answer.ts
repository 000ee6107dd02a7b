import * as v from 'valibot';
import { evidenceSchema, gradeSchema } from './grade.ts';
import { lineSchema, noteSchema } from './text-limits.ts';

/**
 * One answer to one item, stored whole as one entry. `open` keeps a note typed before any grade was chosen;
 * it settles nothing. An item without an answer has no entry at all.
 */
export const answerSchema = v.variant('kind', [
  v.looseObject({
    kind: v.literal('grade'),
    grade: gradeSchema,
    evidence: evidenceSchema,
    note: v.optional(noteSchema),
    /** Given by "the rest of this zone is sound": counted on the sheet as not looked at singly. */
    unlooked: v.optional(v.boolean()),
  }),
  v.looseObject({ kind: v.literal('notSeen'), reason: lineSchema, note: v.optional(noteSchema) }),
  v.looseObject({ kind: v.literal('doesNotApply'), reason: lineSchema, note: v.optional(noteSchema) }),
  v.looseObject({ kind: v.literal('open'), note: noteSchema }),
]);
export type Answer = v.InferOutput<typeof answerSchema>;
