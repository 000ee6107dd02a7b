import * as v from 'valibot';
import { evidenceSchema, gradeSchema } from './grade.ts';
import { finiteSchema, idSchema, lineSchema, noteSchema } from './text-limits.ts';

/** Our choice: past every limit that a definition may set (definition-checks/figures.ts holds them to the same). */
const MOST_READING = 1e9;

const reasonSchema = v.pipe(lineSchema, v.trim(), v.minLength(1));

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
    /** Why this grade counts although the live tests say another. Without it the live tests count. */
    overrules: v.optional(reasonSchema),
  }),
  v.looseObject({
    kind: v.literal('readings'),
    /** By input id, in the input's unit. Those not yet typed are absent. */
    values: v.record(idSchema, v.pipe(finiteSchema, v.minValue(-MOST_READING), v.maxValue(MOST_READING))),
    evidence: evidenceSchema,
    note: v.optional(noteSchema),
    /** The grade that counts in place of what the readings come to, and why. Both are printed. */
    overruled: v.optional(v.looseObject({ grade: gradeSchema, because: reasonSchema })),
  }),
  v.looseObject({ kind: v.literal('notSeen'), reason: lineSchema, note: v.optional(noteSchema) }),
  v.looseObject({ kind: v.literal('doesNotApply'), reason: lineSchema, note: v.optional(noteSchema) }),
  v.looseObject({ kind: v.literal('open'), note: noteSchema }),
]);
export type Answer = v.InferOutput<typeof answerSchema>;
