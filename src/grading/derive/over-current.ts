import { overcurrentBehaviour } from '../../calc/overcurrent-behaviour.ts';
import type { Derivation, DeriveFrom } from './derivation.ts';
import { exactly, type Reading } from './figure.ts';

/**
 * How long the pack lets a current far above its rating flow. Where nothing opened but a fuse is fitted inside, or may
 * be, that fuse may still open what was not reached.
 */
export const overCurrent: Derivation = (from) => {
  const { tests, nameplate } = from;
  const behaviour = overcurrentBehaviour({
    trips: tests.trips.map((trip) => ({
      currentA: trip.currentA,
      heldForS: trip.heldForS,
      opened: trip.opened,
      heatSeen: trip.heatSeen === true,
      coolingNeeded: trip.coolingNeeded === true,
    })),
    continuousCurrentA: nameplate.continuousCurrentA ?? null,
  });
  switch (behaviour.verdict) {
    case 'notTested':
      return null;
    case 'heatOnly':
      return { alternatives: [[{ case: 'heatOnly' }]] };
    case 'noneSeen':
      return {
        alternatives: fuseMayOpen(from) ? [[{ case: 'fuseOnly' }], [{ case: 'noneSeen' }]] : [[{ case: 'noneSeen' }]],
      };
    case 'tripped': {
      if (behaviour.slowestS === null) return null;
      const opened: Reading = { case: 'opened', figure: exactly(behaviour.slowestS) };
      return { alternatives: [behaviour.kinds.includes('heatOnly') ? [opened, { case: 'heatOnly' }] : [opened]] };
    }
  }
};

function fuseMayOpen({ facts, derive }: DeriveFrom): boolean {
  const { fuseFitted } = derive;
  if (fuseFitted === undefined) return false;
  const said = Object.hasOwn(facts, fuseFitted.fact) ? facts[fuseFitted.fact] : undefined;
  return said === undefined || said === fuseFitted.is;
}
