import { requireFinite } from './require-finite.ts';
import { BELOW_KNEE_V, NEAR_FULL_V } from './tables/ocv-lfp.ts';

export type DcResistance =
  | { ok: true; resistanceMohm: number; timeS?: number }
  | { ok: false; because: 'nearFull' | 'belowKnee' | 'sameCurrent' | 'wrongWay' };

/** Two readings at the same pack or cell. Current positive out of the pack. */
export interface TwoReadings {
  firstA: number;
  firstV: number;
  secondA: number;
  secondV: number;
  /** Cells in series between the voltage taps; 1 for a single cell. */
  cellsInSeries: number;
}

/** Our choice: loads and clamps hold about 1 %, so a smaller step is the same current. */
const SAME_CURRENT_FRAC = 0.01;

/**
 * Resistance from two readings of voltage and current, R = (V₁ − V₂) / (I₂ − I₁); the core of both methods.
 *
 * Refused where the two readings carried back to no current, V₁ + I₁ · R per cell, lie near full (over 3.40 V: what
 * relaxes there is surface charge) or below the knee (under 3.12 V, the rest voltage at 10 %: the charge taken by the
 * test itself moves the voltage). Our choice to judge by that voltage and not by a loaded reading: a heavy load may pull
 * a cell on the plateau under 3 V, or a charge pulse push it over 3.4 V, without it being empty or full.
 *
 * Units   A, V in; mΩ out.
 * Error   what the cell's slower processes added between the readings; grows with time, so the time belongs to it.
 * Throws  RangeError if a value is not finite or the number of cells is not a whole number ≥ 1.
 * Source  definition
 * Check   tests/calc/dc-resistance.test.ts
 */
export function dcResistanceMohm(readings: TwoReadings): DcResistance {
  const { firstA, firstV, secondA, secondV, cellsInSeries } = readings;
  for (const [name, value] of Object.entries({ firstA, firstV, secondA, secondV })) {
    requireFinite(`dcResistanceMohm: ${name}`, value);
  }
  if (!(Number.isInteger(cellsInSeries) && cellsInSeries >= 1)) {
    throw new RangeError(`dcResistanceMohm: cellsInSeries must be a whole number of at least 1, got ${cellsInSeries}`);
  }
  const stepA = secondA - firstA;
  if (Math.abs(stepA) <= SAME_CURRENT_FRAC * Math.max(Math.abs(firstA), Math.abs(secondA))) {
    return { ok: false, because: 'sameCurrent' };
  }
  const resistanceOhm = (firstV - secondV) / stepA;
  if (resistanceOhm <= 0) return { ok: false, because: 'wrongWay' };
  const unloadedCellV = (firstV + firstA * resistanceOhm) / cellsInSeries;
  if (unloadedCellV > NEAR_FULL_V) return { ok: false, because: 'nearFull' };
  if (unloadedCellV < BELOW_KNEE_V) return { ok: false, because: 'belowKnee' };
  return { ok: true, resistanceMohm: resistanceOhm * 1000 };
}
