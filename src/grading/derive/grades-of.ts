import type { Band, Bands } from '../../schema/checklist.ts';
import { GRADES, type Grade, gradeRank } from '../../schema/grade.ts';
import type { Derived, Reading } from './figure.ts';
import { common, type Interval, insideBand, intervalOf, without } from './interval.ts';

/**
 * The grades that a derived figure leaves possible, best first: of each alternative the worst of its readings, as far
 * as its figures are known.
 *
 * Throws  RangeError if a reading's case has no bands, or an alternative has no reading: that is a fault of the caller.
 * Check   tests/grading/derive/grades-of.test.ts
 */
export function gradesOf(bands: Bands, derived: Derived, offered: readonly Grade[]): Grade[] {
  const ranks = new Set<number>();
  for (const readings of derived.alternatives) {
    const worst = worstOf(readings.map((reading) => ranksOf(bandsFor(bands, reading), reading)));
    const worse = derived.orWorse ? offered.map(gradeRank).filter((rank) => rank > Math.min(...worst)) : [];
    for (const rank of [...worst, ...worse]) ranks.add(rank);
  }
  return GRADES.filter((grade) => ranks.has(gradeRank(grade)));
}

function bandsFor(bands: Bands, reading: Reading): readonly Band[] {
  const list = Object.hasOwn(bands, reading.case) ? bands[reading.case] : undefined;
  if (list === undefined) throw new RangeError(`gradesOf: the case must have bands, got ${reading.case}`);
  return list;
}

/** Ranks that the worst of several readings can have, each of which can have any of its own. */
function worstOf(each: readonly number[][]): number[] {
  if (each.length === 0) throw new RangeError('gradesOf: an alternative must have a reading, got none');
  const floor = Math.max(...each.map((ranks) => Math.min(...ranks)));
  return [...new Set(each.flat())].filter((rank) => rank >= floor);
}

/** A figure goes to the first band that holds, one known in part to all that it may be in. Without one: the last. */
function ranksOf(bands: readonly Band[], { figure }: Reading): number[] {
  if (figure === undefined) return bands.slice(-1).map(({ grade }) => gradeRank(grade));
  let left: Interval[] = [intervalOf(figure)];
  return bands.flatMap((band) => {
    const inside = insideBand(band);
    const meets = left.some((part) => common(part, inside) !== null);
    left = left.flatMap((part) => without(part, inside));
    return meets ? [gradeRank(band.grade)] : [];
  });
}
