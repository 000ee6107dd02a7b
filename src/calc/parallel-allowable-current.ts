import { allowableCurrentA, type Lead } from './allowable-current.ts';
import { leadSharing, type ParallelConductors } from './lead-sharing.ts';

/**
 * Current that a lead of several conductors side by side may carry: that of one, times those that share it.
 *
 * Shape   area and insulation are of one conductor; null where `allowableCurrentA` reaches none.
 * Units   mm², °C in; A out.
 * Throws  RangeError as `allowableCurrentA` and `leadSharing`.
 * Source  as allowable-current.ts and lead-sharing.ts
 * Check   tests/calc/parallel-allowable-current.test.ts
 */
export function parallelAllowableCurrentA({ count, equal, ...one }: Lead & ParallelConductors): number | null {
  const { sharing } = leadSharing({ count, equal });
  const allowable = allowableCurrentA(one);
  return allowable === null ? null : allowable.currentA * sharing;
}
