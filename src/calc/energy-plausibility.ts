import { energyDensityWhPerL, specificEnergyWhPerKg } from './specific-energy.ts';
import { LFP_PLAUSIBILITY as LFP } from './tables/lfp-plausibility.ts';

export type SpecificEnergyBand = 'belowPack' | 'asPack' | 'abovePack' | 'aboveCell';
export type EnergyDensityBand = 'belowCell' | 'aboveOlderCell' | 'aboveCell';

export interface EnergyPlausibility {
  /** Null where no mass is known. */
  specific: { foundWhPerKg: number; band: SpecificEnergyBand } | null;
  /** Null where the size is not known whole. */
  density: { foundWhPerL: number; band: EnergyDensityBand } | null;
}

/**
 * Energy per kilogram and per litre of a pack, held against what bare LFP cells and whole packs have.
 *
 * Shape   energy (promised or measured) with mass or size or both in; a figure with its band, or null, for each out.
 *         A figure on a limit belongs to the likelier band. More than a bare cell has cannot be: a wrong figure, or
 *         another chemistry.
 * Units   Wh, kg, mm in; Wh/kg, Wh/L out.
 * Throws  RangeError if a figure is not a positive finite number.
 * Source  src/calc/tables/lfp-plausibility.ts
 * Check   tests/calc/energy-plausibility.test.ts
 */
export function energyPlausibility({ energyWh, massKg, lengthMm, widthMm, heightMm }: PackSize): EnergyPlausibility {
  const plausibility: EnergyPlausibility = { specific: null, density: null };
  if (massKg !== undefined) {
    const foundWhPerKg = specificEnergyWhPerKg({ energyWh, massKg });
    plausibility.specific = { foundWhPerKg, band: specificEnergyBand(foundWhPerKg) };
  }
  if (lengthMm !== undefined && widthMm !== undefined && heightMm !== undefined) {
    const foundWhPerL = energyDensityWhPerL({ energyWh, lengthMm, widthMm, heightMm });
    plausibility.density = { foundWhPerL, band: energyDensityBand(foundWhPerL) };
  }
  return plausibility;
}

export interface PackSize {
  energyWh: number;
  massKg?: number;
  lengthMm?: number;
  widthMm?: number;
  heightMm?: number;
}

function specificEnergyBand(foundWhPerKg: number): SpecificEnergyBand {
  if (foundWhPerKg > LFP.cellWhPerKg) return 'aboveCell';
  if (foundWhPerKg > LFP.packWhPerKg.high) return 'abovePack';
  return foundWhPerKg < LFP.packWhPerKg.low ? 'belowPack' : 'asPack';
}

function energyDensityBand(foundWhPerL: number): EnergyDensityBand {
  if (foundWhPerL > LFP.cellWhPerL) return 'aboveCell';
  return foundWhPerL > LFP.olderCellWhPerL ? 'aboveOlderCell' : 'belowCell';
}
