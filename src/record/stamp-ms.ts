import type { Stamp } from '../schema/stamp.ts';

/** Milliseconds since 1970 that a stamp carries: the wall clock, or later where the clock had been set back. */
export function stampMs(stamp: Stamp): number {
  if (!/^\d{15}\.\d{6}\.[0-9a-f]{32}$/.test(stamp))
    throw new RangeError(`stampMs: must be a clock stamp, got ${stamp}`);
  return Number(stamp.slice(0, 15));
}
