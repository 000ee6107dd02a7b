import {
  type OvercurrentBehaviour,
  overcurrentBehaviour,
  TELLING_HOLD_S,
  tellingCurrentA,
} from '../../calc/overcurrent-behaviour.ts';
import { tripNoted } from '../live-tests/trip-noted.ts';
import type { Derivation, DeriveFrom } from './derivation.ts';
import { above, exactly, type Reading } from './figure.ts';

/**
 * How long the pack lets a current far above its rating flow: 1.5 × the continuous claim or more. Without the claim no
 * current is known to be far above it, and only heat tells. Where nothing opened but a fuse is fitted inside, or may be,
 * that fuse may still open what was not reached; where it did open and never came back, a fuse may be what opened it.
 */
export const overCurrent: Derivation = (from) => {
  const claimA = from.nameplate.continuousCurrentA;
  const trips = from.tests.trips.filter(({ currentA }) => claimA === undefined || currentA >= tellingCurrentA(claimA));
  const continuousCurrentA = claimA ?? null;
  const behaviourOf = (orHeat: boolean) =>
    overcurrentBehaviour({ trips: trips.map((trip) => tripNoted(trip, { orHeat })), continuousCurrentA });
  const noted = behaviourOf(false);
  const mayBeHeat = !isHeat(noted) && isHeat(behaviourOf(true));
  const mayBeFuse = fuseMayOpen(from) && trips.some(({ opened, recovery }) => opened && recovery === 'didNot');
  const alternatives = alternativesOf(noted, { from, mayBeFuse });
  if (alternatives.length === 0) return null;
  return { alternatives: mayBeHeat ? [...alternatives, [{ case: 'heatOnly' }]] : alternatives };
};

/** None where nothing that was tried tells. */
function alternativesOf(
  behaviour: OvercurrentBehaviour,
  { from, mayBeFuse }: { from: DeriveFrom; mayBeFuse: boolean },
): Reading[][] {
  const { slowestS, tellingHeldForS } = behaviour;
  if (isHeat(behaviour)) return [[{ case: 'heatOnly' }]];
  const claimed = from.nameplate.continuousCurrentA !== undefined;
  const opened: Reading[] = slowestS === null || !claimed ? [] : [{ case: 'opened', figure: exactly(slowestS) }];
  if (tellingHeldForS !== null && tellingHeldForS >= TELLING_HOLD_S) {
    const nothing: Reading[] = [...opened, { case: 'noneSeen' }];
    return fuseMayOpen(from) ? [[...opened, { case: 'fuseOnly' }], nothing] : [nothing];
  }
  if (opened.length === 0) return [];
  // Carried for as long as any other trial took to open, or longer, it would have opened later still.
  const later = tellingHeldForS !== null && slowestS !== null && tellingHeldForS >= slowestS;
  const readings: Reading[] = later ? [...opened, { case: 'opened', figure: above(tellingHeldForS) }] : opened;
  return mayBeFuse ? [readings, [...readings, { case: 'fuseOnly' }]] : [readings];
}

function isHeat({ kinds }: OvercurrentBehaviour): boolean {
  return kinds.includes('heatOnly');
}

function fuseMayOpen({ facts, derive }: DeriveFrom): boolean {
  const { fuseFitted } = derive;
  if (fuseFitted === undefined) return false;
  const said = Object.hasOwn(facts, fuseFitted.fact) ? facts[fuseFitted.fact] : undefined;
  return said === undefined || said === fuseFitted.is;
}
