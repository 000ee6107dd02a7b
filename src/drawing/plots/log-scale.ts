import type { Scale } from './linear-scale.ts';
import { requireRange } from './nice-ticks.ts';
import { requirePositive } from './require-finite.ts';
import type { ValueRange } from './value-range.ts';

/** `low` stands at `start`, `high` at `end`, equal ratios between. Throws RangeError for what has no place on it. */
export function logScale(range: ValueRange, start: number, end: number): Scale {
  requirePositive('logScale', [range.low, range.high]);
  requireRange('logScale', range);
  const decades = Math.log(range.high / range.low);
  return (value) => {
    requirePositive('logScale', [value]);
    return start + (Math.log(value / range.low) / decades) * (end - start);
  };
}
