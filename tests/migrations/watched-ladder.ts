import { type Ladder, OUR_LADDER } from '../../src/migrations/lift-entry.ts';
import type { Entry } from '../../src/schema/entry.ts';

/** Our own steps, each watched: `see` may throw on the entry that is about to be lifted. */
export function watchedLadder(see: (to: number, entry: Entry) => void): Ladder {
  const steps = OUR_LADDER.steps.map(({ to, step }) => ({
    to,
    step: (entry: Entry) => {
      see(to, entry);
      return step(entry);
    },
  }));
  return { ...OUR_LADDER, steps };
}
