import { type DcResistance, dcResistanceMohm, type TwoReadings } from './dc-resistance.ts';
import { requireNotNegative } from './require-not-negative.ts';

/**
 * DC resistance from two loads in a row: a light one (0.2C, 10 s), then a heavy one (1C, read after 1 s).
 *
 * Shape   first the lighter, then the heavier load, both out of the pack; seconds from the step to the second reading
 *         where known. Refused: near full, below the knee, the same current twice, a second load lighter than the first
 *         or a voltage that did not fall.
 * Units   A, V, s in; mΩ out. Not the smaller figure of a 1 kHz AC meter.
 * Error   see dc-resistance.ts
 * Throws  RangeError if a value is not finite, a current or time negative, or the number of cells not a whole number ≥ 1.
 * Source  the two-step method of IEC 61960 and EN 61951 as two application notes tell it (the standard was not opened)
 * Check   tests/calc/dc-resistance.test.ts
 */
export function dcResistanceTwoStepMohm({ timeS, ...readings }: TwoReadings & { timeS?: number }): DcResistance {
  requireNotNegative('dcResistanceTwoStepMohm: firstA', readings.firstA);
  requireNotNegative('dcResistanceTwoStepMohm: secondA', readings.secondA);
  if (timeS !== undefined) requireNotNegative('dcResistanceTwoStepMohm: timeS', timeS);
  const found = dcResistanceMohm(readings);
  if (found.ok && readings.secondA < readings.firstA) return { ok: false, because: 'wrongWay' };
  return found.ok && timeS !== undefined ? { ...found, timeS } : found;
}
