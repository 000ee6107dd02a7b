import { requirePositive } from './rated-energy.ts';

/** Diameter of AWG 36 in mm (0.005 in), and the 39 equal steps of ratio from there to AWG 4/0, 92 times as thick. */
const AWG_36_DIAMETER_MM = 0.127;
const DIAMETER_RATIO = 92;
const STEPS = 39;
/** Our choice: 4/0 to 40, all that a pack could hold. */
const THICKEST_GAUGE = -3;
const THINNEST_GAUGE = 40;

/**
 * Copper area of an American wire gauge size.
 *
 * Shape   gauge number: 1/0 is 0, 2/0 is −1, 4/0 is −3 (tables/awg.ts reads it from print).
 * Units   gauge in; mm² out.
 * Error   solid wire; a stranded lead of the same size holds about the same copper in a wider outline.
 * Throws  RangeError if the gauge is outside −3 … 40.
 * Source  ASTM B258: d = 0.127 mm · 92^((36 − n)/39), as given in several public tables
 * Check   tests/calc/awg-area.test.ts
 */
export function awgAreaMm2(gauge: number): number {
  if (!(gauge >= THICKEST_GAUGE && gauge <= THINNEST_GAUGE)) {
    throw new RangeError(`awgAreaMm2: gauge must be −3 (4/0) to 40, got ${gauge}`);
  }
  const diameterMm = AWG_36_DIAMETER_MM * DIAMETER_RATIO ** ((36 - gauge) / STEPS);
  return (Math.PI / 4) * diameterMm ** 2;
}

/**
 * Gauge number of a copper area, with its fraction: 2.5 lies between AWG 2 and AWG 3. The inverse of `awgAreaMm2`.
 *
 * Units   mm² in; gauge out.
 * Throws  RangeError if the area is not a positive finite number.
 * Source  as `awgAreaMm2`
 * Check   tests/calc/awg-area.test.ts
 */
export function awgFromAreaMm2(areaMm2: number): number {
  requirePositive('awgFromAreaMm2: areaMm2', areaMm2);
  const diameterMm = Math.sqrt((4 * areaMm2) / Math.PI);
  return 36 - (STEPS * Math.log(diameterMm / AWG_36_DIAMETER_MM)) / Math.log(DIAMETER_RATIO);
}
