import { type DcResistance, dcResistanceMohm, type TwoReadings } from './dc-resistance.ts';
import { requirePositive } from './rated-energy.ts';

/**
 * DC resistance from one step of current, up or down, charge or discharge, with the time after which it was read.
 *
 * Shape   the last reading before the step and one `timeS` after it. Refused: near full, below the knee, the same
 *         current, a voltage that moved the wrong way.
 * Units   A (positive out of the pack), V, s in; mΩ out, at that time: after 10 s it is easily half as much again as
 *         after 1 s, so two figures compare only at equal times.
 * Error   see dc-resistance.ts
 * Throws  RangeError if a value is not finite, the time not positive or the number of cells not a whole number ≥ 1.
 * Source  definition
 * Check   tests/calc/dc-resistance.test.ts
 */
export function dcResistancePulseMohm({ timeS, ...readings }: TwoReadings & { timeS: number }): DcResistance {
  requirePositive('dcResistancePulseMohm: timeS', timeS);
  const found = dcResistanceMohm(readings);
  return found.ok ? { ...found, timeS } : found;
}
