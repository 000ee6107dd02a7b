import * as v from 'valibot';
import { above0, from0 } from '../figure-limits.ts';
import { lineSchema } from '../text-limits.ts';
import { testFields } from './test-fields.ts';

/** A run of several packs, or several strings, side by side. What each gave is an entry of its own. */
export const parallelRunSchema = v.looseObject({
  ...testFields,
  of: v.picklist(['packs', 'strings']),
  currentA: v.optional(above0('A')),
});
export type ParallelRun = v.InferOutput<typeof parallelRunSchema>;

/** One of those in parallel. The part is `<parallel run id>/<number>`, counted from 1. */
export const parallelShareSchema = v.looseObject({
  label: v.optional(lineSchema),
  chargeAh: v.optional(from0('Ah')),
  highestA: v.optional(from0('A')),
});
export type ParallelShare = v.InferOutput<typeof parallelShareSchema>;
