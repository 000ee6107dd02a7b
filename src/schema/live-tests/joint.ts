import * as v from 'valibot';
import { above0, from0 } from '../figure-limits.ts';
import { lineSchema } from '../text-limits.ts';
import { temperatureDegC, testFields } from './test-fields.ts';

/** A joint under load: how much warmer than its surroundings, or the volts dropped across it. */
export const jointSchema = v.looseObject({
  ...testFields,
  place: v.picklist(['terminal', 'inside']),
  label: v.optional(lineSchema),
  currentA: v.optional(above0('A')),
  afterMin: v.optional(from0('min')),
  jointDegC: v.optional(temperatureDegC),
  aroundDegC: v.optional(temperatureDegC),
  dropMv: v.optional(from0('mV')),
});
export type Joint = v.InferOutput<typeof jointSchema>;
