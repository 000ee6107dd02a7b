import * as v from 'valibot';
import { from0 } from '../figure-limits.ts';
import { temperatureDegC, testFields, volts } from './test-fields.ts';

/** DC resistance from two loads or one pulse. Currents are magnitudes out of the pack; volts as read at that current. */
export const resistanceSchema = v.looseObject({
  ...testFields,
  method: v.picklist(['twoStep', 'pulse']),
  of: v.picklist(['pack', 'cell']),
  cellNumber: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(1000))),
  firstA: v.optional(from0('A')),
  firstV: v.optional(volts),
  secondA: v.optional(from0('A')),
  secondV: v.optional(volts),
  /** Seconds from the step to the second reading. */
  afterS: v.optional(from0('s')),
  cellDegC: v.optional(temperatureDegC),
});
export type Resistance = v.InferOutput<typeof resistanceSchema>;
