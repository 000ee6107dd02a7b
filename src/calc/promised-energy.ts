import { ratedEnergyWh } from './rated-energy.ts';

export interface PromisedEnergy {
  energyWh: number;
  /** `claimed`: the nameplate prints it. `computed`: rated Ah × nominal V, because it does not. */
  from: 'claimed' | 'computed';
}

/** Energy the maker promises, as printed or else as Ah × V; null when the nameplate gives neither. */
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
