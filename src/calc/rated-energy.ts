/**
 * Energy a nameplate promises: rated charge at nominal voltage.
 *
 * Units   Ah, V in; Wh out.
 * Throws  RangeError if a value is not a positive finite number.
 * Source  definition: 1 Wh = 1 Ah · 1 V
 * Check   tests/calc/nameplate-checks.test.ts
 */
export function ratedEnergyWh({ ratedCapacityAh, nominalVoltageV }: RatedFigures): number {
  requirePositive('ratedEnergyWh: ratedCapacityAh', ratedCapacityAh);
  requirePositive('ratedEnergyWh: nominalVoltageV', nominalVoltageV);
  return ratedCapacityAh * nominalVoltageV;
}

export interface RatedFigures {
  ratedCapacityAh: number;
  nominalVoltageV: number;
}

/** Throws RangeError, naming the value, unless it is a positive finite number. */
export function requirePositive(name: string, value: number): void {
  if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`${name} must be positive, got ${value}`);
}
