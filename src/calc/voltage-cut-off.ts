import { type LimitBehaviour, limitBehaviour } from './limit-behaviour.ts';

/**
 * What a voltage limit did when a charge (`high`) or a discharge (`low`) was carried up to it and past.
 *
 * Shape   the voltage at which it acted, or else the furthest that was reached; all of them of the pack or all of its
 *         worst cell. One that let `lateV` itself be reached did not act.
 * Units   V.
 * Throws  RangeError if a figure is not finite or `lateV` lies before `limitV`.
 * Source  the limits are the caller's
 * Check   tests/calc/cut-offs.test.ts
 */
export function voltageCutOff({ side, limitV, lateV, actedAtV, reachedV }: VoltageTrial): LimitBehaviour {
  const seen = limitBehaviour({ side, limit: limitV, late: lateV, actedAt: actedAtV, reached: reachedV });
  return seen === 'actedLate' && actedAtV === lateV ? 'didNot' : seen;
}

export interface VoltageTrial {
  side: 'low' | 'high';
  limitV: number;
  lateV: number;
  actedAtV: number | null;
  reachedV: number | null;
}
