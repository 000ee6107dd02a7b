import { requireRange } from './nice-ticks.ts';
import { requireFinite } from './require-finite.ts';
import type { ValueRange } from './value-range.ts';

/** Where a value stands, in units of the drawing. */
export type Scale = (value: number) => number;

/** `low` stands at `start`, `high` at `end`, equal steps between. Throws RangeError for what is not finite. */
export function linearScale(range: ValueRange, start: number, end: number): Scale {
  requireRange('linearScale', range);
  return (value) => {
    requireFinite('linearScale', [value]);
    return start + ((value - range.low) / (range.high - range.low)) * (end - start);
  };
}
