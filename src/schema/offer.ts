import * as v from 'valibot';
import { from0 } from './figure-limits.ts';
import { stampSchema } from './stamp.ts';
import { daySchema, lineSchema } from './text-limits.ts';

export const currencySchema = v.pipe(v.string(), v.regex(/^[A-Z]{3}$/, 'must be a three-letter currency code'));

/**
 * What the pack costs at another day or seller (`price`: the whole of it), or what a variant adds to it (`option`:
 * "with heating"). It stands around the sheet: pricing again tests nothing again and makes no revision. Part: a random id.
 */
export const offerSchema = v.looseObject({
  kind: v.picklist(['price', 'option']),
  /** Name of the option; of a price, what it is a price of, if not of the pack as tested. */
  label: v.optional(lineSchema),
  /** A price: of the whole pack. An option: what it adds. */
  price: from0('money'),
  currency: v.optional(currencySchema),
  pricedOn: v.optional(daySchema),
  seller: v.optional(lineSchema),
  made: stampSchema,
});
export type Offer = v.InferOutput<typeof offerSchema>;
