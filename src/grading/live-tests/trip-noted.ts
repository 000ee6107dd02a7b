import type { OvercurrentTrip } from '../../calc/overcurrent-behaviour.ts';
import type { Trip } from '../../schema/live-tests/trip.ts';

/**
 * A trip as it was noted: heat or cooling of which nobody said anything was not there. "Came back once it had cooled" is
 * cooling needed, in whichever box it was said. `orHeat`: heat of which only the one half was noted is taken as heat.
 */
export function tripNoted(trip: Trip, { orHeat = false } = {}): OvercurrentTrip {
  const { currentA, heldForS, opened, heatSeen, recovery } = trip;
  const coolingNeeded = recovery === 'cooling' ? true : trip.coolingNeeded;
  const half = heatSeen === true ? coolingNeeded === undefined : heatSeen === undefined && coolingNeeded === true;
  const isHeat = (heatSeen === true && coolingNeeded === true) || (orHeat && half);
  return {
    currentA,
    heldForS,
    opened,
    heatSeen: isHeat || heatSeen === true,
    coolingNeeded: isHeat || coolingNeeded === true,
  };
}
