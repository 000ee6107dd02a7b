import type { Checklist } from '../checklist.ts';
import { LID_OFF_STATES } from '../pack-states.ts';
import { PHOTO_PLACES_OUTSIDE } from '../photo.ts';
import type { Problem } from './problem.ts';

/** A fact asked under the lid stands in a zone, or nobody would come by it; no zone is called as a place outside all. */
export function checkPlaces({ zones, facts }: Checklist): Problem[] {
  const lidOff: readonly string[] = LID_OFF_STATES;
  const outside: readonly string[] = PHOTO_PLACES_OUTSIDE;
  return [
    ...zones.flatMap(({ id }, at) =>
      outside.includes(id)
        ? [{ place: `zones[${at}].id`, reason: `"${id}" is where photos outside the zones are: take another word` }]
        : [],
    ),
    ...facts.flatMap(({ zone, state }, at) =>
      zone === undefined && lidOff.includes(state)
        ? [{ place: `facts[${at}].zone`, reason: 'is missing: a fact asked under the lid is asked in a zone' }]
        : [],
    ),
  ];
}
