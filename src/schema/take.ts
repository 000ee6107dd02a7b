import * as v from 'valibot';
import { momentMs } from './figure-limits.ts';
import { stampSchema } from './stamp.ts';
import { lineSchema } from './text-limits.ts';

/** Our choice: a camera's clock and the phone's are set within a day of one another, or not at all. */
const MOST_OFFSET_MS = 24 * 3_600_000;

/** One take of a video: from when to when the shoot clock ran. Part: a random id. */
export const takeSchema = v.looseObject({
  label: v.optional(lineSchema),
  startedAtMs: momentMs,
  /** Absent while it runs. */
  endedAtMs: v.optional(momentMs),
  /** Added to every time on the shoot clock to give the time in the recording; corrected afterwards. */
  offsetMs: v.optional(v.pipe(v.number(), v.integer(), v.minValue(-MOST_OFFSET_MS), v.maxValue(MOST_OFFSET_MS))),
  made: stampSchema,
});
export type Take = v.InferOutput<typeof takeSchema>;

/**
 * Something that happened while a take ran: an answer, a photo, a test was written down for the first time in it, or the
 * tester set a mark of their own (`word`). Part: `<take id>/<random id>`. What it is called is read from the record when
 * it is written out, so that a name corrected later is right.
 */
export const takeMarkSchema = v.variant('kind', [
  v.looseObject({
    kind: v.picklist(['answer', 'photo', 'test']),
    /** Subject and part of the entry. */
    subject: v.pipe(v.string(), v.regex(/^[a-zA-Z]{1,40}$/)),
    part: v.pipe(v.string(), v.minLength(1), v.maxLength(200)),
    atMs: momentMs,
  }),
  v.looseObject({ kind: v.literal('word'), label: v.optional(lineSchema), atMs: momentMs }),
]);
export type TakeMark = v.InferOutput<typeof takeMarkSchema>;
