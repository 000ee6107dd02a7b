import type { ValueRange } from './value-range.ts';

export interface NiceTicks {
  /** Multiples of `step`, rising. */
  values: number[];
  step: number;
  /** Decimals that tell every tick from the next. */
  decimals: number;
}

/**
 * Ticks at multiples of 1, 2 or 5 times a power of ten, as few as asked: the finest step of which at most `most` lie in
 * the range.
 *
 * Throws  RangeError if an end is not finite, the range is not wider than nothing, or `most` is under 1.
 * Check   tests/drawing/plots/nice-ticks.test.ts
 */
export function niceTicks({ low, high }: ValueRange, most: number): NiceTicks {
  requireRange('niceTicks', { low, high });
  if (!(most >= 1)) throw new RangeError(`niceTicks: most must be at least 1, got ${most}`);
  for (let power = Math.max(Math.floor(Math.log10((high - low) / most)), LEAST_POWER); ; power += 1) {
    for (const lead of [1, 2, 5]) {
      const step = scaled(lead, power);
      const [first, last] = [Math.ceil(low / step - NOISE), Math.floor(high / step + NOISE)];
      if (last - first + 1 > most) continue;
      const values = Array.from({ length: last - first + 1 }, (_, place) => scaled((first + place) * lead, power));
      return { values, step, decimals: Math.max(0, -power) };
    }
  }
}

/** The range moved outward to the ticks that frame it, and those ticks. */
export function framedTicks(range: ValueRange, most: number): ValueRange & NiceTicks {
  const { step } = niceTicks(range, most);
  const low = Math.floor(range.low / step + NOISE) * step;
  const high = Math.ceil(range.high / step - NOISE) * step;
  // Moving outward may add two ticks; they are wanted, so they are not counted against `most`.
  const ticks = niceTicks({ low, high }, Math.round((high - low) / step) + 1);
  return { ...ticks, low: ticks.values[0] ?? low, high: ticks.values.at(-1) ?? high };
}

/** Finer steps would run out of numbers. */
const LEAST_POWER = -300;
/** Share of a step within which an end counts as standing on a tick. */
const NOISE = 1e-9;

/** whole · 10^power without the noise of a product: 3 · 10⁻¹ is 0.3. */
function scaled(whole: number, power: number): number {
  return Number(`${whole}e${power}`);
}

export function requireRange(what: string, { low, high }: ValueRange): void {
  if (!Number.isFinite(high - low) || low >= high) {
    throw new RangeError(`${what}: low must be below high and both finite, got ${low} and ${high}`);
  }
}
