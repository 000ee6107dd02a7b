import { requirePositive } from './rated-energy.ts';

/**
 * Section of a flat bus bar or strip, all its layers together.
 *
 * Shape   one layer where none is given.
 * Units   mm in; mm² out.
 * Error   solid section: holes, bends and the joints at its ends are not counted.
 * Throws  RangeError if a side is not positive, or layers not a whole number from 1.
 * Source  definition
 * Check   tests/calc/bus-bar-area.test.ts
 */
export function busBarAreaMm2({ widthMm, thicknessMm, layers = 1 }: BusBar): number {
  requirePositive('busBarAreaMm2: widthMm', widthMm);
  requirePositive('busBarAreaMm2: thicknessMm', thicknessMm);
  if (!(Number.isInteger(layers) && layers >= 1)) {
    throw new RangeError(`busBarAreaMm2: layers must be a whole number from 1, got ${layers}`);
  }
  return widthMm * thicknessMm * layers;
}

export interface BusBar {
  widthMm: number;
  thicknessMm: number;
  /** Bars on top of each other. */
  layers?: number;
}
