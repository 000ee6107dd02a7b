import { type Checklist, RISK_LEVELS } from '../checklist.ts';
import type { Problem } from './problem.ts';

/** The factors k keep 0 ≤ high ≤ serious ≤ medium ≤ low = 1: a worse risk never leaves more, a low one leaves all. */
export function checkFactors({ k }: Checklist): Problem[] {
  return RISK_LEVELS.flatMap((level, at) => {
    const place = `k.${level}`;
    const factor = k[level];
    if (!(factor >= 0 && factor <= 1)) return [{ place, reason: `must lie within 0–1, got ${factor}` }];
    if (level === 'low' && factor !== 1) return [{ place, reason: `must be 1, got ${factor}` }];
    const worse = RISK_LEVELS[at - 1];
    if (worse === undefined || factor >= k[worse]) return [];
    return [{ place, reason: `must be no less than k of ${worse}, ${k[worse]}, got ${factor}` }];
  });
}
