import type { Lead } from '../../schema/live-tests/lead.ts';
import type { Counted } from './results.ts';

export interface LeadSharing {
  counted: Counted;
  /** How many conductors the current is held to share out to. */
  sharing: number;
}

/**
 * How many conductors of one entry carry the current. Only those noted as equal in size and length share it; else the
 * one that was measured is held to carry all. An entry without a count is one lead.
 * Source: calc/parallel-allowable-current.ts.
 */
export function leadSharing({ count = 1, equal }: Lead): LeadSharing {
  if (count === 1) return { counted: 'one', sharing: 1 };
  return equal === true ? { counted: 'sum', sharing: count } : { counted: 'largestAlone', sharing: 1 };
}
