import type { Trip } from '../../../schema/live-tests/trip.ts';
import { duration } from '../../../text/live-tests/results/figures.ts';
import { overcurrentWords as say } from '../../../text/live-tests/results/over-current.ts';

/** "opened after 4 s", "carried for 60 s, did not open". */
export function tripWords({ opened, heldForS }: Pick<Trip, 'opened' | 'heldForS'>): string {
  if (!opened) return say.held(duration(heldForS));
  return heldForS === 0 ? say.openedAtOnce : say.opened(duration(heldForS));
}
