import { boxVolumeL } from '../units/volume-l.ts';
import { requirePositive } from './rated-energy.ts';

/**
 * Energy per mass.
 *
 * Units   Wh, kg in; Wh/kg out.
 * Throws  RangeError if a value is not a positive finite number.
 * Source  definition
 * Check   tests/calc/nameplate-checks.test.ts: 202 Ah · 3.2 V / 3.95 kg = 163.6 Wh/kg (cell data sheet, Rev 0, 2020)
 */
export function specificEnergyWhPerKg({ energyWh, massKg }: { energyWh: number; massKg: number }): number {
  requirePositive('specificEnergyWhPerKg: energyWh', energyWh);
  requirePositive('specificEnergyWhPerKg: massKg', massKg);
  return energyWh / massKg;
}

/**
 * Energy per volume of the box around the pack.
 *
 * Units   Wh, mm in; Wh/L out.
 * Throws  RangeError if a value is not a positive finite number.
 * Source  definition; of the box, not of the case's true shape: our choice, because that is what is measured
 * Check   tests/calc/nameplate-checks.test.ts: 202 Ah · 3.2 V in 54 × 173 × 207 mm = 334 Wh/L (the same sheet)
 */
export function energyDensityWhPerL(given: {
  energyWh: number;
  lengthMm: number;
  widthMm: number;
  heightMm: number;
}): number {
  for (const [name, value] of Object.entries(given)) requirePositive(`energyDensityWhPerL: ${name}`, value);
  return given.energyWh / boxVolumeL(given);
}
