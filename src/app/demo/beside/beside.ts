import type { Put } from '../../../storage/store.ts';
import type { DemoPack, PaintedFacts } from '../demo-pack.ts';
import { offerEntries } from './offers.ts';
import { remedyEntries } from './remedies.ts';
import { secondReadingEntries } from './second-reading.ts';
import { takeEntries } from './takes.ts';

/** What an entry beside the findings may need to know of its pack. */
export interface BesideFacts {
  pack: DemoPack;
  nowMs: number;
  /** One for each photo of the pack, in their order. */
  painted: readonly PaintedFacts[];
  /** A day, so many days ago. */
  dayBefore: (days: number) => string;
  /** An id of the pack's own, the same each time; 0x4000 to 0x7fff are free for what stands here. */
  idOf: (number: number) => string;
}

/** Prices, what remedies take, a take of the film, a second reading: all invented. */
export function besideEntries(facts: BesideFacts): Put[] {
  return [...offerEntries(facts), ...remedyEntries(facts), ...takeEntries(facts), ...secondReadingEntries(facts)];
}
