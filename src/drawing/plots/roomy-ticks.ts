import { textWidth } from '../text-width.ts';
import { type NiceTicks, niceTicks } from './nice-ticks.ts';
import { FIGURE } from './plot-look.ts';
import type { ValueRange } from './value-range.ts';

/** Least distance between two figures of a level axis, in units. */
const APART = 14;
const MOST = 8;

/** Nice ticks along a level axis, so few that their figures stand well apart. */
export function roomyTicks({ range, length, tick }: RoomyTicksInput): NiceTicks {
  for (let most = MOST; ; most -= 1) {
    const ticks = niceTicks(range, most);
    const widest = Math.max(0, ...ticks.values.map((value) => textWidth(tick(value, ticks.decimals), FIGURE)));
    const apart = (ticks.step / (range.high - range.low)) * length;
    if (apart >= widest + APART || most <= 2) return ticks;
  }
}

export interface RoomyTicksInput {
  range: ValueRange;
  /** Of the axis, in units. */
  length: number;
  tick: (value: number, decimals: number) => string;
}
