import { awgAreaMm2 } from './awg-area.ts';
import { requirePositive } from './rated-energy.ts';
import type { AwgSize } from './tables/awg.ts';
import {
  TABLE5_AMBIENT_DEG_C,
  TABLE5_BUNDLE_FACTORS,
  TABLE5_CURRENT_A,
  TABLE5_INSULATION_DEG_C,
  type Table5InsulationDegC,
} from './tables/cfr33-183-425-table5.ts';

/**
 * Printed mm² of an AWG size is rounded to three figures (33.6 for 33.63): an area this much short of a table size
 * still counts as that size. Our choice, because half a unit in the third figure is at most 0.5 %.
 */
const PRINTED_AREA_SHORT_FRAC = 0.005;

export interface Lead {
  areaMm2: number;
  /** Temperature its insulation is rated for. */
  insulationDegC: number;
  /** Air around it; 30 when left out, as the table has it. */
  ambientDegC?: number;
  /** Current-carrying conductors lying together in a circuit of 50 V or more; one when left out. */
  bundledConductors?: number;
}

export interface AllowableCurrent {
  currentA: number;
  /** The table's size and column that were read: the largest not above the lead's. */
  tableAwg: AwgSize;
  tableInsulationDegC: Table5InsulationDegC;
  tableCurrentA: number;
  ambientFactor: number;
  bundleFactor: number;
}

/**
 * Current a copper lead may carry for good: Table 5 of the largest listed size not above it, times √((Ti − Ta)/(Ti − 30)).
 *
 * Shape   null for a lead thinner than AWG 18 or insulation under 60 °C: the table does not reach there.
 *         Where the air is as warm as the insulation may get, 0.
 * Units   mm², °C in; A out.
 * Error   on the safe side by up to one size, for a metric lead between two; the table's own 0.85 for 105 °C
 *         insulation in air of 50 °C is 0.7 % under the formula. Under 30 °C the formula allows more than the table.
 * Throws  RangeError if the area is not positive, a temperature not finite, or the bundle not a whole number from 1.
 * Source  33 CFR 183.425 Table 5 and note 2; the factor, a steady rise going with I², is that of NEC 310.15(B), from memory
 * Check   tests/calc/allowable-current.test.ts
 */
export function allowableCurrentA(lead: Lead): AllowableCurrent | null {
  const { areaMm2, insulationDegC, ambientDegC = TABLE5_AMBIENT_DEG_C, bundledConductors = 1 } = lead;
  requirePositive('allowableCurrentA: areaMm2', areaMm2);
  for (const tempDegC of [insulationDegC, ambientDegC]) {
    if (!Number.isFinite(tempDegC))
      throw new RangeError(`allowableCurrentA: temperature must be finite, got ${tempDegC}`);
  }
  if (!(Number.isInteger(bundledConductors) && bundledConductors >= 1)) {
    throw new RangeError(
      `allowableCurrentA: bundledConductors must be a whole number from 1, got ${bundledConductors}`,
    );
  }
  const row = TABLE5_CURRENT_A.findLast(({ gauge }) => awgAreaMm2(gauge) * (1 - PRINTED_AREA_SHORT_FRAC) <= areaMm2);
  const column = TABLE5_INSULATION_DEG_C.findLast((degC) => degC <= insulationDegC);
  if (row === undefined || column === undefined) return null;
  const tableCurrentA = row.currentA[column];
  const ambientFactor = Math.sqrt(Math.max(0, column - ambientDegC) / (column - TABLE5_AMBIENT_DEG_C));
  const bundleFactor =
    TABLE5_BUNDLE_FACTORS.find(({ fromConductors }) => bundledConductors >= fromConductors)?.factor ?? 1;
  return {
    currentA: tableCurrentA * ambientFactor * bundleFactor,
    tableAwg: row.size,
    tableInsulationDegC: column,
    tableCurrentA,
    ambientFactor,
    bundleFactor,
  };
}
