/** A stretch of time without a sample, between the samples `index` and `index + 1`. */
export interface TimeGap {
  index: number;
  fromS: number;
  toS: number;
  lengthS: number;
}

/** Our choice: ten times the usual step is more than a logger's own jitter or a change of its rate by a decade. */
const TIMES_THE_USUAL_STEP = 10;
/** Our choice: under a minute a straight line between two samples of a pack under load is harmless. */
const SHORTEST_GAP_S = 60;

/**
 * Gaps in a log: steps in time over ten times the median step and over a minute.
 *
 * Shape   one array in order of time in, gaps in order out.
 * Units   s
 * Throws  RangeError if a value is not finite or time falls.
 * Source  our choice, see the two limits above
 * Check   tests/calc/time-gaps.test.ts
 */
export function timeGaps(timeS: ArrayLike<number>): TimeGap[] {
  if (timeS.length < 2) return [];
  const stepS = new Float64Array(timeS.length - 1);
  for (let at = 0; at < stepS.length; at++) {
    const step = (timeS[at + 1] ?? Number.NaN) - (timeS[at] ?? Number.NaN);
    if (!(step >= 0 && Number.isFinite(step))) {
      throw new RangeError(`timeGaps: time must be finite and not fall, got ${timeS[at + 1]} after ${timeS[at]}`);
    }
    stepS[at] = step;
  }
  if (!stepS.some((step) => step > SHORTEST_GAP_S)) return [];
  const usualS = stepS.toSorted()[Math.floor(stepS.length / 2)] ?? 0;
  const gaps: TimeGap[] = [];
  for (const [index, lengthS] of stepS.entries()) {
    if (lengthS > SHORTEST_GAP_S && lengthS > TIMES_THE_USUAL_STEP * usualS) {
      gaps.push({ index, fromS: timeS[index] ?? 0, toS: timeS[index + 1] ?? 0, lengthS });
    }
  }
  return gaps;
}
