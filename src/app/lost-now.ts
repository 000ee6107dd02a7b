import { type LastChance, lostOnLeaving } from '../grading/lost-on-leaving.ts';
import type { LidOffState } from '../schema/pack-states.ts';
import { photoItemIds } from './photo-item-ids.ts';
import type { Asking } from './questions.ts';

/** What goes with the present state. What went with an earlier one was said then, and stands in the record. */
export function lostNow({ definition, record }: Asking, state: LidOffState): LastChance[] {
  const lost = lostOnLeaving(definition, record, { state, photoItemIds: photoItemIds(record) });
  const leavingNow = new Set(
    definition.items.filter(({ lastChance }) => lastChance?.leaving === state).map(({ id }) => id),
  );
  return lost.filter(({ itemId }) => leavingNow.has(itemId));
}
