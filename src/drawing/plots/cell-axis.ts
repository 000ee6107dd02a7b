import { framedTicks, type NiceTicks } from './nice-ticks.ts';
import { atLeastWide, type ValueRange, valueRange } from './value-range.ts';

export interface CellAxis extends ValueRange, NiceTicks {
  /** It does not begin at 0. */
  isBroken: boolean;
}

/** Least part of the highest value that the axis spans, so that a millivolt never fills the page. Our choice. */
const LEAST_SPAN_FRAC = 0.01;
/** The lowest bar still stands this part of the spread long. */
const BELOW_FRAC = 0.4;
/** Where less than this part of the highest value would be cut away, the axis begins at 0 instead. Our choice. */
const CUT_AWAY_FRAC = 0.5;
/** Least span where all values are 0 or next to it. */
const LEAST_SPAN = 1e-3;
const MOST_TICKS = 5;

/** An axis that shows how far the cells lie apart: from 0 where it can, else cut off and known to be. */
export function cellAxis(values: readonly number[]): CellAxis {
  const range = valueRange(values) ?? { low: 0, high: 1 };
  const fromZero = valueRange([0, range.low, range.high]) ?? range;
  const spread = atLeastWide(range, Math.max(LEAST_SPAN, range.high * LEAST_SPAN_FRAC));
  const low = spread.low - (spread.high - spread.low) * BELOW_FRAC;
  if (low < range.high * CUT_AWAY_FRAC) {
    return { ...framedTicks(atLeastWide(fromZero, LEAST_SPAN), MOST_TICKS), isBroken: false };
  }
  const framed = framedTicks({ low, high: spread.high }, MOST_TICKS);
  return { ...framed, isBroken: framed.low > 0 };
}
