import { requirePositive } from './rated-energy.ts';
import { requireNotNegative } from './require-not-negative.ts';

/**
 * What a pack with nothing connected loses in a day, and how long a full one lasts so.
 *
 * Shape   days are null where the meter read no current: then nothing says when it will be flat.
 * Units   mA, Ah in; Ah per day, days out.
 * Error   leaves out the cells' own self-discharge and assumes that the current stays as it was.
 * Throws  RangeError if the current is negative or not finite, or the capacity not positive.
 * Source  definition: Q = I · t
 * Check   tests/calc/standby-drain.test.ts
 */
export function standbyDrain({ currentMa, capacityAh }: { currentMa: number; capacityAh: number }): StandbyDrain {
  requireNotNegative('standbyDrain: currentMa', currentMa);
  requirePositive('standbyDrain: capacityAh', capacityAh);
  const drainAhPerDay = (currentMa * HOURS_PER_DAY) / 1000;
  return { drainAhPerDay, daysToFlat: drainAhPerDay === 0 ? null : capacityAh / drainAhPerDay };
}

export interface StandbyDrain {
  drainAhPerDay: number;
  daysToFlat: number | null;
}

const HOURS_PER_DAY = 24;
