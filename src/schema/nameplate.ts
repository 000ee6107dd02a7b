import * as v from 'valibot';
import { above0, from0 } from './figure-limits.ts';
import { currencySchema } from './offer.ts';
import { daySchema, finiteSchema, lineSchema, noteSchema } from './text-limits.ts';

const temperature = v.pipe(finiteSchema, v.minValue(-273.15), v.maxValue(500));
const count = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(1000));

/**
 * Every field of the Nameplate with its check. Each is an entry of its own (`nameplate`, field name); a field that
 * was not filled in has no entry. Claims are the maker's; `massKg` and the sizes are what the tester found.
 */
export const nameplateFields = {
  name: lineSchema,
  sample: lineSchema,
  maker: lineSchema,
  model: lineSchema,
  serial: lineSchema,
  revision: lineSchema,
  madeOn: lineSchema,
  nominalVoltageV: above0('V'),
  ratedCapacityAh: above0('Ah'),
  ratedEnergyWh: above0('Wh'),
  cellsInSeries: count,
  stringsInParallel: count,
  continuousCurrentA: above0('A'),
  peakCurrentA: above0('A'),
  peakForS: above0('s'),
  chargeCurrentA: above0('A'),
  chargeVoltageV: above0('V'),
  cutOffVoltageV: above0('V'),
  chargeLowestDegC: temperature,
  chargeHighestDegC: temperature,
  dischargeLowestDegC: temperature,
  dischargeHighestDegC: temperature,
  claimedMassKg: above0('kg'),
  massKg: above0('kg'),
  lengthMm: above0('mm'),
  widthMm: above0('mm'),
  heightMm: above0('mm'),
  ipCode: lineSchema,
  cycleLife: lineSchema,
  warranty: lineSchema,
  marks: lineSchema,
  price: from0('money'),
  currency: currencySchema,
  pricedOn: daySchema,
  seller: lineSchema,
  receivedOn: daySchema,
  obtained: v.picklist(['bought', 'lent', 'supplied', 'found']),
  obtainedFrom: lineSchema,
  paysCommission: v.boolean(),
  note: noteSchema,
} as const;

export type NameplateField = keyof typeof nameplateFields;
export type Nameplate = { [F in NameplateField]?: v.InferOutput<(typeof nameplateFields)[F]> };
export const NAMEPLATE_FIELDS = Object.keys(nameplateFields) as NameplateField[];
