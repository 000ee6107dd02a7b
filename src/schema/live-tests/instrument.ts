import * as v from 'valibot';
import { from0 } from '../figure-limits.ts';
import { stampSchema } from '../stamp.ts';
import { lineSchema, noteSchema } from '../text-limits.ts';

/** A meter or tester, with its maker's stated accuracy: ± (share of the reading + a fixed part). */
export const instrumentSchema = v.looseObject({
  name: lineSchema,
  voltageReadingPct: v.optional(from0('pct')),
  voltageAbsoluteV: v.optional(from0('V')),
  currentReadingPct: v.optional(from0('pct')),
  currentAbsoluteA: v.optional(from0('A')),
  temperatureAbsoluteDegC: v.optional(from0('degC')),
  note: v.optional(noteSchema),
  made: stampSchema,
});
export type Instrument = v.InferOutput<typeof instrumentSchema>;
