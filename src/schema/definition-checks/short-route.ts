import type { Checklist, Item } from '../checklist.ts';
import type { Problem } from './problem.ts';

/**
 * The short route reaches every zone and every hazard with an item that always applies, and holds every safety and
 * stop item: a short record then never leaves a danger or a zone out without saying so.
 */
export function checkShortRoute({ zones, hazards, items }: Checklist): Problem[] {
  const always = items.filter(alwaysAskedShort);
  const missing = 'has no item on the short route that always applies';
  return [
    ...zones.flatMap(({ id }, at) =>
      always.some(({ zone }) => zone === id) ? [] : [{ place: `zones[${at}]`, reason: `zone "${id}" ${missing}` }],
    ),
    ...hazards.flatMap(({ id }, at) =>
      always.some(({ hazard }) => hazard === id)
        ? []
        : [{ place: `hazards[${at}]`, reason: `hazard "${id}" ${missing}` }],
    ),
    ...items.flatMap(({ safety, stop, route }, at) =>
      (safety || stop) && route !== 'short'
        ? [{ place: `items[${at}].route`, reason: `a ${stop ? 'stop' : 'safety'} item must be on the short route` }]
        : [],
    ),
  ];
}

function alwaysAskedShort({ route, onlyIf, mayNotApply }: Item): boolean {
  return route === 'short' && onlyIf === undefined && mayNotApply.length === 0;
}
