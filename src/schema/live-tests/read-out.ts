import * as v from 'valibot';
import { from0 } from '../figure-limits.ts';
import { testFields } from './test-fields.ts';

/** What the pack's own read-out gives, and what it asks for. */
export const readOutSchema = v.looseObject({
  ...testFields,
  way: v.picklist(['wireless', 'cable', 'display']),
  connected: v.optional(v.boolean()),
  rangeM: v.optional(from0('m')),
  accountNeeded: v.optional(v.boolean()),
  worksOffline: v.optional(v.boolean()),
  showsCells: v.optional(v.boolean()),
  showsTemperatures: v.optional(v.boolean()),
});
export type ReadOut = v.InferOutput<typeof readOutSchema>;
