import type { Checklist, Item, Likelihood } from '../checklist.ts';
import { GRADES } from '../grade.ts';
import { likelihoodOf } from '../likelihood.ts';
import type { Problem } from './problem.ts';

/** Least likely first, as MIL-STD-882E Table II has them from E to A; null is no harm at all. */
const LEAST_FIRST: readonly (Likelihood | null)[] = [null, 'E', 'D', 'C', 'B', 'A'];

/** Hazard and severity come together, a likelihood only with them, and it never falls as the grade worsens. */
export function checkItemHazards({ items }: Checklist): Problem[] {
  return items.flatMap((item, at) => {
    const place = `items[${at}]`;
    const { hazard, severity, likelihood } = item;
    const problems: Problem[] = [];
    if (hazard !== undefined && severity === undefined) {
      problems.push({ place: `${place}.severity`, reason: 'is missing: an item with a hazard needs its severity' });
    }
    if (hazard === undefined && severity !== undefined) {
      problems.push({ place: `${place}.severity`, reason: 'is given without a hazard' });
    }
    if (hazard === undefined && likelihood !== undefined) {
      problems.push({ place: `${place}.likelihood`, reason: 'is given without a hazard' });
    }
    return [...problems, ...fallingLikelihood(place, item)];
  });
}

/** As the item will be graded: by the rule of likelihoodOf, with what the item itself states. */
function fallingLikelihood(place: string, item: Item): Problem[] {
  const offered = GRADES.filter((grade) => item.grades[grade] !== undefined);
  return offered.flatMap((grade, at) => {
    const better = offered[at - 1];
    if (better === undefined) return [];
    const here = likelihoodOf(item, grade);
    const before = likelihoodOf(item, better);
    if (LEAST_FIRST.indexOf(here) >= LEAST_FIRST.indexOf(before)) return [];
    const reason = `falls from ${before} at ${better} to ${here ?? 'none'} at ${grade}: a worse grade is never less likely to harm`;
    return [{ place: `${place}.likelihood`, reason }];
  });
}
