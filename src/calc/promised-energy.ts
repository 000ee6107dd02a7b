import { ratedEnergyWh } from './rated-energy.ts';

export interface PromisedEnergy {
  energyWh: number;
  /** `claimed`: the nameplate prints it. `computed`: rated Ah × nominal V, because it does not. */
  from: 'claimed' | 'computed';
}

/**
 * Energy the maker promises: as printed, or else rated charge × nominal voltage.
 *
 * Shape   null when the nameplate gives neither.
 * Units   Wh, Ah, V in; Wh out.
 * Throws  RangeError if charge or voltage, where they count, are not positive.
 * Source  definition; the printed figure first: our choice, because it is what the maker claims
 * Check   tests/calc/nameplate-checks.test.ts
 */
export function promisedEnergy(figures: {
  ratedEnergyWh?: number;
  ratedCapacityAh?: number;
  nominalVoltageV?: number;
}): PromisedEnergy | null {
  if (figures.ratedEnergyWh !== undefined) return { energyWh: figures.ratedEnergyWh, from: 'claimed' };
  const { ratedCapacityAh, nominalVoltageV } = figures;
  if (ratedCapacityAh === undefined || nominalVoltageV === undefined) return null;
  return { energyWh: ratedEnergyWh({ ratedCapacityAh, nominalVoltageV }), from: 'computed' };
}
