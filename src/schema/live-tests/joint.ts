import * as v from 'valibot';
import { lineSchema } from '../text-limits.ts';
import { notNegative, positive, temperatureDegC, testFields } from './test-fields.ts';

/** A joint under load: how much warmer than its surroundings, or the volts dropped across it. */
export const jointSchema = v.looseObject({
  ...testFields,
  place: v.picklist(['terminal', 'inside']),
  label: v.optional(lineSchema),
  currentA: v.optional(positive),
  afterMin: v.optional(notNegative),
  jointDegC: v.optional(temperatureDegC),
  aroundDegC: v.optional(temperatureDegC),
  dropMv: v.optional(notNegative),
});
export type Joint = v.InferOutput<typeof jointSchema>;
