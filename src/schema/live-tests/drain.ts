import * as v from 'valibot';
import { from0 } from '../figure-limits.ts';
import { testFields } from './test-fields.ts';

/** What the closed pack draws from its own cells with nothing connected. */
export const drainSchema = v.looseObject({
  ...testFields,
  currentMa: from0('mA'),
  mode: v.optional(v.picklist(['awake', 'asleep', 'afterCutOff'])),
});
export type Drain = v.InferOutput<typeof drainSchema>;
