import { requirePositive } from './rated-energy.ts';

/**
 * Resistance of a thermistor at the low side of a divider, from the voltage across it: R = Rs · V / (Vref − V).
 *
 * Units   Ω, V in; Ω out.
 * Throws  RangeError if the series resistance or the reference is not positive, or the voltage not between 0 and it.
 * Source  Ohm's law
 * Check   tests/calc/thermistor.test.ts
 */
export function thermistorDividerOhm({ seriesOhm, referenceV, acrossV }: Divider): number {
  requirePositive('thermistorDividerOhm: seriesOhm', seriesOhm);
  requirePositive('thermistorDividerOhm: referenceV', referenceV);
  if (!(acrossV > 0 && acrossV < referenceV)) {
    throw new RangeError(`thermistorDividerOhm: acrossV must be within 0 and ${referenceV}, got ${acrossV}`);
  }
  return (seriesOhm * acrossV) / (referenceV - acrossV);
}

export interface Divider {
  seriesOhm: number;
  referenceV: number;
  acrossV: number;
}
