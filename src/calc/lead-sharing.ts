/** How the current of one lead is counted: `largestAlone` where its conductors are not known to be equal. */
export type Counted = 'sum' | 'largestAlone' | 'one';

export interface LeadSharing {
  counted: Counted;
  /** How many conductors the current is held to share out to. */
  sharing: number;
}

/**
 * How many conductors of one lead carry its current. Only those known to be equal in size and length share it; else
 * one of them, the largest where they differ, is held to carry all.
 *
 * Shape   one conductor where no count is given; nobody having said whether they are equal counts as not equal.
 * Throws  RangeError if the count is not a whole number from 1.
 * Source  parallel leads only if equal: the rule of NEC 310.10, from memory; common practice
 * Check   tests/calc/lead-sharing.test.ts
 */
export function leadSharing({ count = 1, equal }: ParallelConductors): LeadSharing {
  if (!(Number.isInteger(count) && count >= 1)) {
    throw new RangeError(`leadSharing: count must be a whole number from 1, got ${count}`);
  }
  if (count === 1) return { counted: 'one', sharing: 1 };
  return equal === true ? { counted: 'sum', sharing: count } : { counted: 'largestAlone', sharing: 1 };
}

export interface ParallelConductors {
  count?: number | undefined;
  equal?: boolean | undefined;
}
