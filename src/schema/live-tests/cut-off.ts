import * as v from 'valibot';
import { above0, from0, momentMs } from '../figure-limits.ts';
import { temperatureDegC, testFields, volts } from './test-fields.ts';
import { RECOVERIES } from './trip.ts';

/** What is driven past its limit. The four temperature ones belong to the live and open state. */
export const CUT_OFF_KINDS = [
  'highVoltage',
  'lowVoltage',
  'chargeCurrent',
  'coldCharge',
  'coldDischarge',
  'hotCharge',
  'hotDischarge',
] as const;
export type CutOffKind = (typeof CUT_OFF_KINDS)[number];
export const TEMPERATURE_CUT_OFFS = ['coldCharge', 'coldDischarge', 'hotCharge', 'hotDischarge'] as const;

/** What a flat pack needs to wake. */
export const WAKE_UPS = ['byItself', 'anyCharger', 'specialCharger', 'button', 'didNot'] as const;
export type WakeUp = (typeof WAKE_UPS)[number];

/**
 * One trial of a cut-off. `acted` with the figure at which it did; not acted with the figure that was reached. A figure
 * that was not read is absent. Volts of the worst cell tell more than volts of the pack; either may be there.
 */
export const cutOffSchema = v.looseObject({
  ...testFields,
  kind: v.picklist(CUT_OFF_KINDS),
  acted: v.boolean(),
  /** Who ended it. `thermalSwitch` is a mechanical one in the path or on the sense line. */
  by: v.optional(v.picklist(['bms', 'thermalSwitch'])),
  packVoltageV: v.optional(from0('V')),
  worstCellVoltageV: v.optional(volts),
  sensorDegC: v.optional(temperatureDegC),
  currentA: v.optional(above0('A')),
  afterS: v.optional(from0('s')),
  /** Cold and hot: how the sensor was brought there. Never the cells. */
  method: v.optional(v.picklist(['cup', 'icePack', 'warmAir', 'ambient'])),
  /** A thermal switch is fitted, whether or not it opened. */
  switchFitted: v.optional(v.boolean()),
  /** What the trial did to the sensor. */
  sensorAfter: v.optional(v.picklist(['whole', 'loosened', 'melted'])),
  recovery: v.optional(v.picklist(RECOVERIES)),
  recoveredAtV: v.optional(from0('V')),
  recoveredAtDegC: v.optional(temperatureDegC),
  wakeUp: v.optional(v.picklist(WAKE_UPS)),
});
export type CutOff = v.InferOutput<typeof cutOffSchema>;

/** One passage through the gate of the hot and cold sensor tests. Valid as long as a passage of Make safe. */
export const sensorGateSchema = v.looseObject({
  passedAtMs: v.pipe(momentMs, v.integer()),
  day: v.pipe(v.string(), v.isoDate()),
  acknowledged: v.pipe(v.array(v.string()), v.maxLength(40)),
});
export type SensorGate = v.InferOutput<typeof sensorGateSchema>;
