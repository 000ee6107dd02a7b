import type { Checklist } from '../schema/checklist.ts';
import { gradeRank } from '../schema/grade.ts';
import { placeIn, placesOf } from './core.ts';

/**
 * What remedies leave of each item, as the rank of the worst grade it can still have. A found outcome is mapped to the
 * better of found and left; "does not apply" stays (DESIGN §5, "Remedies").
 */
export interface Relief {
  low: readonly number[];
  high: readonly number[];
}

/** What is known beside the record about whether a remedy can be carried out; null: not yet known. */
export interface Advice {
  /** The terminal fuse advice found a fuse. */
  fuseFits: boolean | null;
}

/** One remedy of the definition, ready for sums. */
export interface CoreRemedy {
  id: string;
  reach: 'outside' | 'workshop';
  settles: readonly { place: number; leaves: number }[];
  /** Ends at which it counts. A need not yet known counts at the high end only, one not met at neither. */
  counts: { low: boolean; high: boolean };
  need: 'met' | 'open' | 'ruledOut';
}

/** No remedy at all, those an owner can carry out, and all of them. */
export interface Reliefs {
  none: Relief;
  outside: Relief;
  all: Relief;
}

const WORST = 3;

export function reliefsOf(remedies: readonly CoreRemedy[], itemCount: number): Reliefs {
  const none = noRelief(itemCount);
  const outside = remedies.filter(({ reach }) => reach === 'outside').reduce(withRemedy, none);
  return { none, outside, all: remedies.reduce(withRemedy, none) };
}

export function noRelief(itemCount: number): Relief {
  const untouched: number[] = new Array(itemCount).fill(WORST);
  return { low: untouched, high: untouched };
}

export function withRemedy(relief: Relief, remedy: CoreRemedy): Relief {
  return {
    low: remedy.counts.low ? lowered(relief.low, remedy) : relief.low,
    high: remedy.counts.high ? lowered(relief.high, remedy) : relief.high,
  };
}

export function coreRemedies(definition: Checklist, advice: Advice): CoreRemedy[] {
  const itemAt = placesOf(definition.items);
  return definition.remedies.map(({ id, reach, settles, needs }) => {
    const need = needs === undefined ? 'met' : needOf(advice.fuseFits);
    return {
      id,
      reach,
      settles: settles.map(({ item, leaves }) => ({ place: placeIn(itemAt, item), leaves: gradeRank(leaves) })),
      counts: { low: need === 'met', high: need !== 'ruledOut' },
      need,
    };
  });
}

function needOf(fits: boolean | null): CoreRemedy['need'] {
  if (fits === null) return 'open';
  return fits ? 'met' : 'ruledOut';
}

function lowered(ranks: readonly number[], remedy: CoreRemedy): number[] {
  const left = [...ranks];
  for (const { place, leaves } of remedy.settles) left[place] = Math.min(left[place] ?? WORST, leaves);
  return left;
}
