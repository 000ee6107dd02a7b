import { requirePositive } from './rated-energy.ts';
import { requireNotNegative } from './require-not-negative.ts';

/** Our choice: up to a second is at once, up to a minute is delayed, longer is heat. */
const INSTANT_UP_TO_S = 1;
const DELAYED_UP_TO_S = 60;
/** Our choice: only this much over the claim, held that long, shows that nothing watches the current. */
const TELLING_OVER_CLAIM = 1.5;
export const TELLING_HOLD_S = 60;

export interface OvercurrentTrip {
  currentA: number;
  /** Until it opened, or until the tester ended it. */
  heldForS: number;
  opened: boolean;
  /** Smoke, glow, smell, or a part too hot to touch. */
  heatSeen: boolean;
  /** It came back only after it had cooled. */
  coolingNeeded: boolean;
}

export type OvercurrentKind = 'instant' | 'delayed' | 'heatOnly';

export interface OvercurrentBehaviour {
  kinds: OvercurrentKind[];
  /** `tripped`: something other than heat opened it at least once. `heatOnly`: heat did, at 1.5 × the claim or more. */
  verdict: 'tripped' | 'heatOnly' | 'noneSeen' | 'notTested';
  /** Longest wait of a trip that was not heat, at 1.5 × the claim or more; of all such trips where there is no claim. */
  slowestS: number | null;
  slowestAtA: number | null;
  /** Highest current that only heat ended, and after how long. */
  heatAtA: number | null;
  heatAfterS: number | null;
  /** Highest current carried without opening, and the longest that it was. */
  highestHeldA: number | null;
  highestHeldForS: number | null;
  /** Longest time carried without opening, and the highest current that was. */
  longestHeldForS: number | null;
  longestHeldAtA: number | null;
  /** Longest that 1.5 × the claim or more was carried without opening; null where there is no claim. */
  tellingHeldForS: number | null;
}

/**
 * What a pack does about too much current, from the trips tried on it.
 *
 * Shape   any number of trips in any order; nothing is told of what was not tried. A trip with heat seen and cooling
 *         needed is heat, however soon. "None seen" needs the claim and a telling hold.
 * Units   A, s in and out.
 * Throws  RangeError if a current or the claim is not positive, or a time is negative or not finite.
 * Source  common practice, no source; the limits are our choice
 * Check   tests/calc/overcurrent-behaviour.test.ts
 */
export function overcurrentBehaviour({ trips, continuousCurrentA }: OvercurrentTests): OvercurrentBehaviour {
  for (const trip of trips) requireTrip(trip);
  if (continuousCurrentA !== null) requirePositive('overcurrentBehaviour: continuousCurrentA', continuousCurrentA);
  const tellingA = continuousCurrentA === null ? null : tellingCurrentA(continuousCurrentA);

  const opened = trips.filter((trip) => trip.opened);
  const held = trips.filter((trip) => !trip.opened);
  const kinds = (['instant', 'delayed', 'heatOnly'] as const).filter((kind) =>
    opened.some((trip) => kindOf(trip) === kind),
  );
  const byCurrent = opened.filter((trip) => kindOf(trip) !== 'heatOnly');
  const tellingHeld = tellingA === null ? [] : held.filter((trip) => trip.currentA >= tellingA);
  const noneSeen = tellingHeld.some(({ heldForS }) => heldForS >= TELLING_HOLD_S);

  const slowest = top(
    byCurrent.filter((trip) => tellingA === null || trip.currentA >= tellingA),
    longest,
  );
  const heat = top(
    opened.filter((trip) => kindOf(trip) === 'heatOnly'),
    highest,
  );
  // Slowly opened under 1.5 × the claim, it may well open by current above.
  const onlyHeat = heat !== null && (tellingA === null || heat.currentA >= tellingA);
  const highestHeld = top(held, highest);
  const longestHeld = top(held, longest);
  return {
    kinds,
    verdict: byCurrent.length > 0 ? 'tripped' : onlyHeat ? 'heatOnly' : noneSeen ? 'noneSeen' : 'notTested',
    slowestS: slowest?.heldForS ?? null,
    slowestAtA: slowest?.currentA ?? null,
    heatAtA: heat?.currentA ?? null,
    heatAfterS: heat?.heldForS ?? null,
    highestHeldA: highestHeld?.currentA ?? null,
    highestHeldForS: highestHeld?.heldForS ?? null,
    longestHeldForS: longestHeld?.heldForS ?? null,
    longestHeldAtA: longestHeld?.currentA ?? null,
    tellingHeldForS: top(tellingHeld, longest)?.heldForS ?? null,
  };
}

/** From this current on a trial tells what becomes of one far above the claim. Our choice. */
export function tellingCurrentA(continuousCurrentA: number): number {
  return TELLING_OVER_CLAIM * continuousCurrentA;
}

export interface OvercurrentTests {
  trips: readonly OvercurrentTrip[];
  /** The maker's claim; null where there is none. */
  continuousCurrentA: number | null;
}

function kindOf({ heldForS, heatSeen, coolingNeeded }: OvercurrentTrip): OvercurrentKind {
  if (heldForS > DELAYED_UP_TO_S || (heatSeen && coolingNeeded)) return 'heatOnly';
  return heldForS <= INSTANT_UP_TO_S ? 'instant' : 'delayed';
}

type Order = (a: OvercurrentTrip, b: OvercurrentTrip) => number;
const highest: Order = (a, b) => b.currentA - a.currentA || b.heldForS - a.heldForS;
const longest: Order = (a, b) => b.heldForS - a.heldForS || b.currentA - a.currentA;

function top(trips: readonly OvercurrentTrip[], order: Order): OvercurrentTrip | null {
  return trips.toSorted(order)[0] ?? null;
}

function requireTrip({ currentA, heldForS }: OvercurrentTrip): void {
  requirePositive('overcurrentBehaviour: currentA', currentA);
  requireNotNegative('overcurrentBehaviour: heldForS', heldForS);
}
