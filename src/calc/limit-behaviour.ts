import { requireFinite } from './require-finite.ts';

/**
 * `acted`: at the limit or before. `actedLate`: past it, but no further than `late`. `didNot`: not by `late`.
 * `notTested`: not driven as far as `late`, so whether it would have acted is open.
 */
export type LimitBehaviour = 'acted' | 'actedLate' | 'didNot' | 'notTested';

export interface DrivenLimit {
  /** The side on which the limit lies: `high` is exceeded upward, `low` downward. */
  side: 'low' | 'high';
  limit: number;
  late: number;
  /** The figure at which it acted; null: it did not act, or nobody tried. */
  actedAt: number | null;
  /** The furthest figure reached without it acting; null: not driven. Not read when it acted. */
  reached: number | null;
}

/**
 * What a protection did when something was driven towards and past its limit; the core of the cut-off classifiers.
 *
 * Shape   figures of one quantity in one unit in; one word out. `late` lies past `limit`, or on it.
 * Throws  RangeError if a figure is not finite or `late` lies before `limit`.
 * Source  definition
 * Check   tests/calc/cut-offs.test.ts
 */
export function limitBehaviour({ side, limit, late, actedAt, reached }: DrivenLimit): LimitBehaviour {
  for (const [name, value] of Object.entries({ limit, late, actedAt: actedAt ?? limit, reached: reached ?? limit })) {
    requireFinite(`limitBehaviour: ${name}`, value);
  }
  const past = (value: number, mark: number) => (side === 'high' ? value - mark : mark - value);
  if (past(late, limit) < 0) {
    throw new RangeError(`limitBehaviour: late must not lie before the ${side} limit ${limit}, got ${late}`);
  }
  if (actedAt !== null) {
    if (past(actedAt, limit) <= 0) return 'acted';
    return past(actedAt, late) <= 0 ? 'actedLate' : 'didNot';
  }
  return reached !== null && past(reached, late) >= 0 ? 'didNot' : 'notTested';
}
