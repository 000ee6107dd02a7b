import * as v from 'valibot';
import { stampSchema } from '../stamp.ts';
import { daySchema, finiteSchema, noteSchema, randomIdSchema } from '../text-limits.ts';

export const temperatureDegC = v.pipe(finiteSchema, v.minValue(-273.15), v.maxValue(1500));
/** A cell that reads below zero is reversed, so volts may be negative. */
export const volts = v.pipe(finiteSchema, v.minValue(-2000), v.maxValue(2000));

/** What every live test carries: the day, the instrument, words of the tester's own, and its place among the others. */
export const testFields = {
  on: v.optional(daySchema),
  instrumentId: v.optional(randomIdSchema),
  note: v.optional(noteSchema),
  /** Orders tests of one kind; stays when the test is corrected. */
  made: stampSchema,
};
