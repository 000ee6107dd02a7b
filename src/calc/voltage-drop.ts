import { requirePositive } from './rated-energy.ts';

export interface LoadedConductor {
  /** Of the whole way the current takes: out and back. */
  resistanceMohm: number;
  currentA: number;
}

/**
 * Voltage lost along a conductor: U = R · I.
 *
 * Units   mΩ, A in; mV out.
 * Throws  RangeError if a value is not a positive finite number.
 * Source  Ohm's law
 * Check   tests/calc/voltage-drop.test.ts
 */
export function voltageDropMv({ resistanceMohm, currentA }: LoadedConductor): number {
  requirePositive('voltageDropMv: resistanceMohm', resistanceMohm);
  requirePositive('voltageDropMv: currentA', currentA);
  return resistanceMohm * currentA;
}

/**
 * Heat made in a conductor: P = R · I².
 *
 * Units   mΩ, A in; W out.
 * Throws  RangeError if a value is not a positive finite number.
 * Source  Joule's law
 * Check   tests/calc/voltage-drop.test.ts
 */
export function conductorHeatW({ resistanceMohm, currentA }: LoadedConductor): number {
  return (voltageDropMv({ resistanceMohm, currentA }) / 1000) * currentA;
}
