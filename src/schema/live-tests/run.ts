import * as v from 'valibot';
import { above0, countFrom, from0 } from '../figure-limits.ts';
import { finiteSchema, lineSchema, sha256Schema } from '../text-limits.ts';
import { temperatureDegC, testFields } from './test-fields.ts';

/** The same list as calc/run-end-name.ts, which this layer cannot see; a test holds them together. */
export const RUN_END_CHOICES = ['lowVoltage', 'packDisconnect', 'stopped', 'taper', 'unclear'] as const;
export type RunEndChoice = (typeof RUN_END_CHOICES)[number];

/** Where voltage was sensed: at the pack's posts, or at the load's end of the leads, whose drop then counts. */
export const SENSE_POINTS = ['packPosts', 'loadEnd', 'cells'] as const;
export type SensePoint = (typeof SENSE_POINTS)[number];

const MAX_CURVE_POINTS = 600;
/** Any column of a log; our choice, so that a plot's scale stays finite. Times are in seconds, 30 000 years of them. */
const MOST_OF_CURVE = 1e12;
const point = v.pipe(finiteSchema, v.minValue(-MOST_OF_CURVE), v.maxValue(MOST_OF_CURVE));
const series = v.pipe(v.array(point), v.maxLength(MAX_CURVE_POINTS));

/** A run's curve, thinned for plots. Lists of one length; null where the log had no such column. */
export const curveSchema = v.looseObject({
  timeS: series,
  voltageV: v.nullable(series),
  currentA: v.nullable(series),
  chargeAh: v.nullable(series),
  temperatureDegC: v.optional(v.nullable(series)),
});
export type Curve = v.InferOutput<typeof curveSchema>;

/** Which rows of which log a run was read from. `logId` is the SHA-256 of the log's bytes, kept like a photo's. */
const fromLogSchema = v.looseObject({
  logId: sha256Schema,
  firstLine: countFrom(1),
  lastLine: countFrom(1),
  rowCount: countFrom(0),
  gapCount: countFrom(0),
  longestGapS: v.optional(from0('s')),
  /** The instrument's own counter over the same rows, where it has one. */
  counterChargeAh: v.optional(from0('Ah')),
  /** How the log's columns were read (logs/log-mapping.ts), kept so that the reading can be repeated. */
  mapping: v.looseObject({}),
  /** What the log said of fields a person may also type: where the run says otherwise now, a person did. */
  said: v.optional(v.looseObject({})),
});

/**
 * One capacity run, typed or read from a log. Charge, energy and current are magnitudes. A field that is not known is
 * absent; `end` absent is "not said", `unclear` is "looked at, and cannot be told".
 */
export const runSchema = v.looseObject({
  ...testFields,
  label: v.optional(lineSchema),
  chargeAh: v.optional(above0('Ah')),
  energyWh: v.optional(above0('Wh')),
  durationS: v.optional(above0('s')),
  /** Mean current of the run. */
  currentA: v.optional(above0('A')),
  meanVoltageV: v.optional(above0('loggedV')),
  startVoltageV: v.optional(from0('loggedV')),
  endVoltageV: v.optional(from0('loggedV')),
  end: v.optional(v.picklist(RUN_END_CHOICES)),
  /** Who opened: needed only to say so; what counts is whether the knee was seen. */
  openedBy: v.optional(v.picklist(['bms', 'load', 'hand'])),
  /** How it began. `restMin` between the end of charge and the start of the run. */
  chargedToV: v.optional(above0('V')),
  taperA: v.optional(from0('A')),
  restMin: v.optional(from0('min')),
  ambientDegC: v.optional(temperatureDegC),
  cellStartDegC: v.optional(temperatureDegC),
  cellEndDegC: v.optional(temperatureDegC),
  sensePoint: v.optional(v.picklist(SENSE_POINTS)),
  log: v.optional(fromLogSchema),
  curve: v.optional(curveSchema),
  /** Numbers on which `end` rests (calc/run-end.ts). */
  evidence: v.optional(v.looseObject({})),
});
export type Run = v.InferOutput<typeof runSchema>;

/** A log file kept with the pack. The part is the SHA-256 of its bytes. */
export const logSchema = v.looseObject({
  name: lineSchema,
  byteCount: countFrom(1),
  rowCount: v.optional(countFrom(0)),
  instrumentId: testFields.instrumentId,
  made: testFields.made,
});
export type Log = v.InferOutput<typeof logSchema>;
