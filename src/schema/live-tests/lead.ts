import * as v from 'valibot';
import { above0, from0 } from '../figure-limits.ts';
import { lineSchema, randomIdSchema } from '../text-limits.ts';
import { temperatureDegC, testFields } from './test-fields.ts';

export const LEAD_PLACES = ['main', 'link', 'sense', 'other'] as const;
export type LeadPlace = (typeof LEAD_PLACES)[number];
/** How a cable's section is known. Over its insulation a diameter gives no current. */
export const LEAD_WAYS = ['printed', 'bareStrands', 'overInsulation'] as const;
export type LeadWay = (typeof LEAD_WAYS)[number];
export const METALS = ['copper', 'aluminium', 'nickel', 'steel', 'brass'] as const;
export type Metal = (typeof METALS)[number];
export const INSULATIONS = ['pvc', 'xlpe', 'epr', 'silicone'] as const;
export type Insulation = (typeof INSULATIONS)[number];

/** One cable, or one bus bar or cell link. A set of equal cables in parallel is one entry with its count. */
export const leadSchema = v.looseObject({
  ...testFields,
  place: v.picklist(LEAD_PLACES),
  form: v.picklist(['cable', 'bar']),
  label: v.optional(lineSchema),
  way: v.optional(v.picklist(LEAD_WAYS)),
  printedMm2: v.optional(above0('mm2')),
  /** As printed: 4/0 … 40. */
  printedAwg: v.optional(
    v.pipe(v.string(), v.regex(/^([1-4]\/0|0|[1-9]|[1-3]\d|40)$/, 'must be a gauge such as 4/0 or 10')),
  ),
  /** Over the bare strands, or over the insulation, as `way` says. */
  diameterMm: v.optional(above0('mm')),
  /** Highest conductor temperature the insulation is marked for. */
  insulationDegC: v.optional(temperatureDegC),
  insulation: v.optional(v.picklist(INSULATIONS)),
  /** How many lie in parallel. */
  count: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(40))),
  /** Whether those in parallel are equal in size and length: only then do they share. */
  equal: v.optional(v.boolean()),
  lengthMm: v.optional(above0('mm')),
  aroundDegC: v.optional(temperatureDegC),
  widthMm: v.optional(above0('mm')),
  thicknessMm: v.optional(above0('mm')),
  layers: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(100))),
  metal: v.optional(v.picklist(METALS)),
  /** The photo ruler the diameter or width was taken from. */
  rulerId: v.optional(randomIdSchema),
  /** What that ruler gave, and how sure it was: counts while the diameter or width is still that figure. */
  byPhoto: v.optional(v.strictObject({ mm: above0('mm'), plusMinusMm: from0('mm') })),
});
export type Lead = v.InferOutput<typeof leadSchema>;
