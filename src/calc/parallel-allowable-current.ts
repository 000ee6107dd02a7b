import { allowableCurrentA, type Lead } from './allowable-current.ts';

/** Our choice, because a formed lead is not measured closer: lengths within 1 % are one length. */
const SAME_LENGTH_FRAC = 0.01;

export interface ParallelLead extends Lead {
  /** Not measured counts as not known to be equal. */
  lengthMm?: number;
}

/**
 * Current that leads side by side may carry: their sum if equal in size, insulation and length, else the largest alone.
 *
 * Shape   null when there is no lead or none that Table 5 reaches. Equal leads share equally, so the sum is their
 *         number times the one in the warmest place.
 * Units   mm², °C, mm in; A out.
 * Throws  RangeError as `allowableCurrentA`.
 * Source  parallel leads only if equal: the rule of NEC 310.10, from memory; common practice
 * Check   tests/calc/parallel-allowable-current.test.ts
 */
export function parallelAllowableCurrentA(
  leads: readonly ParallelLead[],
): { currentA: number; counted: 'sum' | 'largestAlone' | 'one' } | null {
  const allowableA = leads.flatMap((lead) => allowableCurrentA(lead)?.currentA ?? []);
  if (allowableA.length === 0) return null;
  if (leads.length === 1) return { currentA: Math.max(...allowableA), counted: 'one' };
  return allEqual(leads)
    ? { currentA: leads.length * Math.min(...allowableA), counted: 'sum' }
    : { currentA: Math.max(...allowableA), counted: 'largestAlone' };
}

function allEqual(leads: readonly ParallelLead[]): boolean {
  const lengthsMm = leads.flatMap(({ lengthMm }) => lengthMm ?? []);
  return (
    new Set(leads.map(({ areaMm2 }) => areaMm2)).size === 1 &&
    new Set(leads.map(({ insulationDegC }) => insulationDegC)).size === 1 &&
    lengthsMm.length === leads.length &&
    Math.max(...lengthsMm) <= Math.min(...lengthsMm) * (1 + SAME_LENGTH_FRAC)
  );
}
