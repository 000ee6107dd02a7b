import type { Checklist, Item } from '../schema/checklist.ts';
import { LID_OFF_STATES, type LidOffState } from '../schema/pack-states.ts';
import { isFinding } from './item-risk.ts';
import type { Judged } from './judged.ts';
import { isSettled } from './outcome-set.ts';
import { type ItemOutcomes, outcomesOf } from './outcomes.ts';

export interface LastChance {
  itemId: string;
  /** What taking the pack further apart destroys. */
  lost: string;
  /** The item is answered, its photo rule wants a photo, and none is linked. */
  needsPhoto: boolean;
  /** More than one outcome is still possible. */
  open: boolean;
}

/**
 * "Before you disturb it": the asked items whose last chance goes with the state being left, or went with an earlier
 * one, that are still open or still lack the photo their rule wants. In definition order.
 *
 * Check   tests/grading/lost-on-leaving.test.ts
 */
export function lostOnLeaving(
  definition: Checklist,
  record: Judged,
  { state, photoItemIds }: { state: LidOffState; photoItemIds: ReadonlySet<string> },
): LastChance[] {
  return outcomesOf(definition, record).flatMap((outcome) => {
    const { item, because, set } = outcome;
    if (item.lastChance === undefined || because === 'notAsked' || !isGone(item.lastChance.leaving, state)) return [];
    const open = !isSettled(set);
    const needsPhoto = wantsPhoto(item, outcome) && !photoItemIds.has(item.id);
    return open || needsPhoto ? [{ itemId: item.id, lost: item.lastChance.lost, needsPhoto, open }] : [];
  });
}

function isGone(leaving: LidOffState, state: LidOffState): boolean {
  return LID_OFF_STATES.indexOf(leaving) <= LID_OFF_STATES.indexOf(state);
}

function wantsPhoto(item: Item, { grade }: ItemOutcomes): boolean {
  if (grade === null || item.photo === 'none') return false;
  return item.photo === 'always' || isFinding(grade);
}
