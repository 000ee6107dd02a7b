import { boxVolumeL } from '../units/volume-l.ts';
import { requirePositive } from './rated-energy.ts';

/**
 * Energy per mass.
 *
 * Units   Wh, kg in; Wh/kg out.
 * Throws  RangeError if a value is not a positive finite number.
 * Check   tests/calc/nameplate-checks.test.ts: 202 Ah · 3.2 V / 3.95 kg = 163.6 Wh/kg (cell data sheet, SOURCES §5)
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
 * Check   tests/calc/nameplate-checks.test.ts: 202 Ah · 3.2 V in 54 × 173 × 207 mm = 334 Wh/L (SOURCES §5)
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
