import * as v from 'valibot';
import { stampSchema } from '../stamp.ts';
import { lineSchema, noteSchema } from '../text-limits.ts';
import { notNegative } from './test-fields.ts';

/** A meter or tester, with its maker's stated accuracy: ± (share of the reading + a fixed part). */
export const instrumentSchema = v.looseObject({
  name: lineSchema,
  voltageReadingPct: v.optional(notNegative),
  voltageAbsoluteV: v.optional(notNegative),
  currentReadingPct: v.optional(notNegative),
  currentAbsoluteA: v.optional(notNegative),
  temperatureAbsoluteDegC: v.optional(notNegative),
  note: v.optional(noteSchema),
  made: stampSchema,
});
export type Instrument = v.InferOutput<typeof instrumentSchema>;
