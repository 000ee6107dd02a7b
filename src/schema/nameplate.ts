import * as v from 'valibot';
import { daySchema, finiteSchema, lineSchema, noteSchema } from './text-limits.ts';

const positive = v.pipe(finiteSchema, v.gtValue(0));
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
  nominalVoltageV: positive,
  ratedCapacityAh: positive,
  ratedEnergyWh: positive,
  cellsInSeries: count,
  stringsInParallel: count,
  continuousCurrentA: positive,
  peakCurrentA: positive,
  peakForS: positive,
  chargeCurrentA: positive,
  chargeVoltageV: positive,
  cutOffVoltageV: positive,
  chargeLowestDegC: temperature,
  chargeHighestDegC: temperature,
  dischargeLowestDegC: temperature,
  dischargeHighestDegC: temperature,
  claimedMassKg: positive,
  massKg: positive,
  lengthMm: positive,
  widthMm: positive,
  heightMm: positive,
  ipCode: lineSchema,
  cycleLife: lineSchema,
  warranty: lineSchema,
  marks: lineSchema,
  price: v.pipe(finiteSchema, v.minValue(0)),
  currency: v.pipe(v.string(), v.regex(/^[A-Z]{3}$/, 'must be a three-letter currency code')),
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
