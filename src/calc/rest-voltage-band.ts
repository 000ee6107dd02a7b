import { requireFinite } from './require-finite.ts';
import { requireNotNegative } from './require-not-negative.ts';
import { BELOW_20_PCT_V, OVER_90_PCT_V } from './tables/ocv-lfp.ts';

export type RestVoltageBand = 'below20' | 'cannotTell' | 'over90' | 'notRested';

/** Our choice: as after charging; within half an hour a plateau voltage settles to some mV. */
export const LEAST_REST_MIN = 30;

/**
 * What the rest voltage of an LFP cell says of its charge: a band, never a figure.
 *
 * Shape   voltage of one cell and minutes without current in (null: not known, which counts as not rested).
 * Units   V, min.
 * Throws  RangeError if the voltage is not finite or the minutes are negative.
 * Source  src/calc/tables/ocv-lfp.ts
 * Check   tests/calc/rest-voltage-band.test.ts
 */
export function restVoltageBand({ cellVoltageV, restedMin }: RestedCell): RestVoltageBand {
  requireFinite('restVoltageBand: cellVoltageV', cellVoltageV);
  if (restedMin !== null) requireNotNegative('restVoltageBand: restedMin', restedMin);
  if (restedMin === null || restedMin < LEAST_REST_MIN) return 'notRested';
  if (cellVoltageV < BELOW_20_PCT_V) return 'below20';
  return cellVoltageV > OVER_90_PCT_V ? 'over90' : 'cannotTell';
}

export interface RestedCell {
  cellVoltageV: number;
  restedMin: number | null;
}
