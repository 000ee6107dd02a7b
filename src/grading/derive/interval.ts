import type { Band } from '../../schema/checklist.ts';
import type { Figure } from './figure.ts';

/** A stretch of the number line; `lowIn` and `highIn` say whether its ends belong to it. */
export interface Interval {
  low: number;
  high: number;
  lowIn: boolean;
  highIn: boolean;
}

export function intervalOf({ low, high, open }: Figure): Interval {
  return { low, high, lowIn: open !== 'low', highIn: open !== 'high' };
}

export function insideBand({ from, over, upTo, under }: Band): Interval {
  return {
    low: Math.max(from ?? -Infinity, over ?? -Infinity),
    high: Math.min(upTo ?? Infinity, under ?? Infinity),
    lowIn: !(over !== undefined && over >= (from ?? -Infinity)),
    highIn: !(under !== undefined && under <= (upTo ?? Infinity)),
  };
}

/** What two intervals share, or null. */
export function common(a: Interval, b: Interval): Interval | null {
  const low = Math.max(a.low, b.low);
  const high = Math.min(a.high, b.high);
  const lowIn = (a.low < low || a.lowIn) && (b.low < low || b.lowIn);
  const highIn = (a.high > high || a.highIn) && (b.high > high || b.highIn);
  const isEmpty = low > high || (low === high && !(lowIn && highIn));
  return isEmpty ? null : { low, high, lowIn, highIn };
}

/** What of `a` lies outside `b`: at most one part below it and one above. */
export function without(a: Interval, b: Interval): Interval[] {
  const below = { low: -Infinity, lowIn: true, high: b.low, highIn: !b.lowIn };
  const beyond = { low: b.high, lowIn: !b.highIn, high: Infinity, highIn: true };
  return [b.low > -Infinity ? common(a, below) : null, b.high < Infinity ? common(a, beyond) : null].filter(
    (part) => part !== null,
  );
}
