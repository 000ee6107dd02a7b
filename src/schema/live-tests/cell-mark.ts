import * as v from 'valibot';
import { stampSchema } from '../stamp.ts';
import { noteSchema, sha256Schema } from '../text-limits.ts';

/** The code on a cell as read or typed, kept raw; what it means is worked out anew each time. */
export const cellMarkSchema = v.looseObject({
  text: v.pipe(v.string(), v.minLength(1), v.maxLength(200)),
  read: v.picklist(['photo', 'typed']),
  /** Kind of code the reader found, e.g. QRCode or DataMatrix. */
  symbology: v.optional(v.pipe(v.string(), v.maxLength(40))),
  cellNumber: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(1000))),
  photoId: v.optional(sha256Schema),
  note: v.optional(noteSchema),
  made: stampSchema,
});
export type CellMark = v.InferOutput<typeof cellMarkSchema>;
