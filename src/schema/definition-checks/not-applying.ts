import type { Checklist } from '../checklist.ts';
import type { Problem } from './problem.ts';

/** Nobody may wave a safety or stop item away: there only a fact decides whether it applies. */
export function checkNotApplying({ items }: Checklist): Problem[] {
  return items.flatMap(({ safety, stop, mayNotApply }, at) =>
    (safety || stop) && mayNotApply.length > 0
      ? [
          {
            place: `items[${at}].mayNotApply`,
            reason: `a ${stop ? 'stop' : 'safety'} item has no reasons not to apply: only a fact decides`,
          },
        ]
      : [],
  );
}
