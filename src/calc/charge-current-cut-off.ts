import { type LimitBehaviour, limitBehaviour } from './limit-behaviour.ts';
import { requireNotNegative } from './require-not-negative.ts';

/** Our choice: as for over-current out of the pack, a minute is enough to act or to have been carried. */
export const CHARGE_CURRENT_HELD_S = 60;

/**
 * What a charge-current limit did when more current than the limit was pushed into the pack.
 *
 * Shape   the current at which it acted, or else the highest that was carried, and for how long: `afterS` is the time
 *         until it acted, or the time the current was held. Acting at the limit but only after more than 60 s is late;
 *         a current carried for less than 60 s, or for an unknown time, settles nothing.
 * Units   A (magnitudes), s.
 * Throws  RangeError if a figure is not finite, the time negative or `lateA` below `limitA`.
 * Source  the limits are the caller's
 * Check   tests/calc/cut-offs.test.ts
 */
export function chargeCurrentCutOff({ limitA, lateA, actedAtA, reachedA, afterS }: ChargeCurrentTrial): LimitBehaviour {
  if (afterS !== null) requireNotNegative('chargeCurrentCutOff: afterS', afterS);
  const seen = limitBehaviour({ side: 'high', limit: limitA, late: lateA, actedAt: actedAtA, reached: reachedA });
  if (seen === 'acted' && afterS !== null && afterS > CHARGE_CURRENT_HELD_S) return 'actedLate';
  const carried = actedAtA === null && seen === 'didNot';
  return carried && (afterS === null || afterS < CHARGE_CURRENT_HELD_S) ? 'notTested' : seen;
}

export interface ChargeCurrentTrial {
  limitA: number;
  lateA: number;
  actedAtA: number | null;
  reachedA: number | null;
  afterS: number | null;
}
