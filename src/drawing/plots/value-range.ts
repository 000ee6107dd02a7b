export interface ValueRange {
  low: number;
  high: number;
}

/** Lowest and highest of the values; null when there are none. */
export function valueRange(values: readonly number[]): ValueRange | null {
  let low = Infinity;
  let high = -Infinity;
  for (const value of values) {
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  return low <= high ? { low, high } : null;
}

/** A range at least `least` wide, widened about its middle. */
export function atLeastWide({ low, high }: ValueRange, least: number): ValueRange {
  const lacking = least - (high - low);
  return lacking > 0 ? { low: low - lacking / 2, high: high + lacking / 2 } : { low, high };
}
