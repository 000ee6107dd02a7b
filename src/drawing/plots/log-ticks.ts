import { requireRange } from './nice-ticks.ts';
import { requirePositive } from './require-finite.ts';
import type { ValueRange } from './value-range.ts';

export interface LogTick {
  value: number;
  /** A power of ten. */
  isDecade: boolean;
}

/**
 * Ticks of an axis by decades: 1, 2 and 5 times every power of ten in the range.
 *
 * Throws  RangeError if an end is not finite or not above 0, or low is not below high.
 * Check   tests/drawing/plots/log-ticks.test.ts
 */
export function logTicks({ low, high }: ValueRange): LogTick[] {
  requirePositive('logTicks', [low, high]);
  requireRange('logTicks', { low, high });
  const ticks: LogTick[] = [];
  for (let power = Math.floor(Math.log10(low)) - 1; power <= Math.ceil(Math.log10(high)) + 1; power += 1) {
    for (const lead of [1, 2, 5]) {
      const value = Number(`${lead}e${power}`);
      if (value >= low * (1 - NOISE) && value <= high * (1 + NOISE)) ticks.push({ value, isDecade: lead === 1 });
    }
  }
  return ticks;
}

/** The range moved outward to the nearest 1, 2 or 5 of a decade, and at least two such steps wide. */
export function logFrame({ low, high }: ValueRange): ValueRange {
  requirePositive('logFrame', [low, high]);
  const ticks = logTicks({ low: low / 20, high: high * 20 }).map((tick) => tick.value);
  const below = ticks.filter((value) => value <= low * (1 + NOISE));
  const above = ticks.filter((value) => value >= high * (1 - NOISE));
  const wide = (above[0] ?? high) / (below.at(-1) ?? low) >= 4 * (1 - NOISE);
  return {
    low: (wide ? below.at(-1) : below.at(-2)) ?? low,
    high: (wide ? above[0] : above[1]) ?? high,
  };
}

const NOISE = 1e-9;
