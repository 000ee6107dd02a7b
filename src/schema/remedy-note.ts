import * as v from 'valibot';
import { from0 } from './figure-limits.ts';
import { currencySchema } from './offer.ts';
import { daySchema, lineSchema, noteSchema } from './text-limits.ts';

/** What the tester knows of one remedy for this pack. Part: the remedy's id. What was not typed is absent, never zero. */
export const remedyNoteSchema = v.looseObject({
  /** Parts and, if it is paid for, work. */
  price: v.optional(from0('money')),
  currency: v.optional(currencySchema),
  pricedOn: v.optional(daySchema),
  /** In place of the checklist's own. */
  parts: v.optional(lineSchema),
  timeMin: v.optional(from0('min')),
  note: v.optional(noteSchema),
});
export type RemedyNote = v.InferOutput<typeof remedyNoteSchema>;
