import { conductorResistanceMohm } from './conductor-resistance.ts';
import { requirePositive } from './rated-energy.ts';
import type { ConductorMetal } from './tables/conductor-materials.ts';

export interface BusBar {
  metal: ConductorMetal;
  widthMm: number;
  thicknessMm: number;
  /** Between the centres of what it joins. */
  lengthMm: number;
  /** Bars on top of each other; one when left out. */
  layers?: number;
  /** Of the metal; 20 when left out. */
  tempDegC?: number;
  /** Left out: no current density. */
  currentA?: number;
}

/**
 * Section, resistance and current density of a flat bus bar or strip.
 *
 * Shape   the density is null without a current.
 * Units   mm, °C, A in; mm², µΩ, A/mm² out.
 * Error   solid section of the length given: holes, bends and the joints at its ends are not counted.
 * Throws  RangeError if a size or the current is not positive, or layers not a whole number from 1.
 * Source  section by definition; resistance as conductor-resistance.ts
 * Check   tests/calc/bus-bar.test.ts
 */
export function busBar({ metal, widthMm, thicknessMm, lengthMm, layers = 1, tempDegC = 20, currentA }: BusBar): {
  areaMm2: number;
  resistanceMicroohm: number;
  currentDensityAPerMm2: number | null;
} {
  requirePositive('busBar: widthMm', widthMm);
  requirePositive('busBar: thicknessMm', thicknessMm);
  if (!(Number.isInteger(layers) && layers >= 1)) {
    throw new RangeError(`busBar: layers must be a whole number from 1, got ${layers}`);
  }
  if (currentA !== undefined) requirePositive('busBar: currentA', currentA);
  const areaMm2 = widthMm * thicknessMm * layers;
  return {
    areaMm2,
    resistanceMicroohm: conductorResistanceMohm({ metal, areaMm2, lengthMm, tempDegC }) * 1000,
    currentDensityAPerMm2: currentA === undefined ? null : currentA / areaMm2,
  };
}
