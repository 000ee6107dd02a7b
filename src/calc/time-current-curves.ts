import { type LeadWithstand, type LoadedLead, leadWithstandS } from './lead-withstand.ts';
import { requirePositive } from './rated-energy.ts';
import { type FuseFamily, fuseGatesFor } from './tables/fuse-gates.ts';

export interface LeadWithstandPoint {
  currentA: number;
  timeS: number;
  bound: LeadWithstand['bound'];
}

/**
 * Points of a lead's withstand for a log-log time–current plot: a straight line of slope −2.
 *
 * Shape   one point per current, in the order given; `bound` says where the line is only a lower bound (over 5 s).
 * Units   mm², °C, A in; A, s out.
 * Throws  RangeError as `leadWithstandS`.
 * Source  as lead-withstand.ts
 * Check   tests/calc/time-current-curves.test.ts
 */
export function leadWithstandCurve(
  lead: Omit<LoadedLead, 'currentA'>,
  currentsA: readonly number[],
): LeadWithstandPoint[] {
  return currentsA.map((currentA) => {
    const { timeS, bound } = leadWithstandS({ ...lead, currentA });
    return { currentA, timeS, bound };
  });
}

export interface FuseGatePoint {
  currentA: number;
  /** Carries at least this long. */
  minTimeS?: number;
  /** Opens within this. */
  maxTimeS?: number;
}

/**
 * Gates of a fuse of one rating, as points for the same plot.
 *
 * Shape   in rising current; empty when no gate is known for that family and rating.
 * Units   A in; A, s out.
 * Throws  RangeError if the rating is not positive.
 * Source  tables/fuse-gates.ts; its status says how sure
 * Check   tests/calc/time-current-curves.test.ts
 */
export function fuseGatePoints(family: FuseFamily, ratingA: number): FuseGatePoint[] {
  requirePositive('fuseGatePoints: ratingA', ratingA);
  return fuseGatesFor(family, ratingA).map(({ currentFactor, minTimeS, maxTimeS }) => ({
    currentA: currentFactor * ratingA,
    ...(minTimeS === undefined ? {} : { minTimeS }),
    ...(maxTimeS === undefined ? {} : { maxTimeS }),
  }));
}
