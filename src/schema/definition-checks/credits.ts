import type { Checklist } from '../checklist.ts';
import { GRADES } from '../grade.ts';
import type { Problem } from './problem.ts';

/**
 * Credits lie within 0–1 and each grade earns less than the one before it. Strictly less is our choice, because two
 * grades with one credit would be told apart on the sheet and not in the score.
 */
export function checkCredits({ credits }: Checklist): Problem[] {
  return GRADES.flatMap((grade, at) => {
    const place = `credits.${grade}`;
    const credit = credits[grade];
    if (!(credit >= 0 && credit <= 1)) return [{ place, reason: `must lie within 0–1, got ${credit}` }];
    const better = GRADES[at - 1];
    if (better === undefined || credit < credits[better]) return [];
    return [{ place, reason: `must be less than the credit of ${better}, ${credits[better]}, got ${credit}` }];
  });
}
