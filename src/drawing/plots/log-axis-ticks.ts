import type { AxisTick } from './axis-marks.ts';
import type { Scale } from './linear-scale.ts';
import { logTicks } from './log-ticks.ts';
import type { ValueRange } from './value-range.ts';

export interface LogAxisInput {
  range: ValueRange;
  scale: Scale;
  say: (value: number) => string;
  /** How much of the axis a figure takes, with the gap to the next. */
  lengthOf: (text: string) => number;
}

/** Ticks at 1, 2 and 5 of every decade. Figures at all of them where they stand apart, else at the decades alone. */
export function logAxisTicks({ range, scale, say, lengthOf }: LogAxisInput): AxisTick[] {
  const ticks = logTicks(range).map((tick) => ({ ...tick, place: scale(tick.value), text: say(tick.value) }));
  const crowded = ticks.some((tick, rank) => {
    const before = ticks[rank - 1];
    if (before === undefined) return false;
    return Math.abs(tick.place - before.place) < (lengthOf(tick.text) + lengthOf(before.text)) / 2;
  });
  const decadesOnly = crowded && ticks.filter((tick) => tick.isDecade).length >= 2;
  return ticks.map(({ place, text, isDecade }) => ({
    place,
    text: decadesOnly && !isDecade ? null : text,
    minor: !isDecade,
  }));
}
