import * as v from 'valibot';
import { daySchema, lineSchema, noteSchema } from './text-limits.ts';

/** What became of the sample. Each field is an entry of its own. */
export const afterwardsFields = {
  fate: v.picklist(['kept', 'closed-again', 'in-parts', 'recycled', 'returned', 'damaged-set-apart', 'other']),
  on: daySchema,
  cells: v.picklist(['with-pack', 'reused', 'stored', 'recycled', 'unknown']),
  where: lineSchema,
  note: noteSchema,
} as const;
export type AfterwardsField = keyof typeof afterwardsFields;
export type Afterwards = { [F in AfterwardsField]?: v.InferOutput<(typeof afterwardsFields)[F]> };
