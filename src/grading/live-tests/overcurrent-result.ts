import { overcurrentBehaviour } from '../../calc/overcurrent-behaviour.ts';
import type { Tested } from '../judged.ts';
import { highestCarriedA, leadWithstand } from './lead-withstand-result.ts';
import type { OvercurrentResult, WithstandResult } from './results.ts';
import { tripNoted } from './trip-noted.ts';

/** What the pack does about too much current, and how long its main leads stand the highest that was tried. */
export function overcurrentResult(tested: Tested): OvercurrentResult {
  const { nameplate, tests } = tested;
  return {
    behaviour: overcurrentBehaviour({
      trips: tests.trips.map((trip) => tripNoted(trip)),
      continuousCurrentA: nameplate.continuousCurrentA ?? null,
    }),
    trips: [...tests.trips],
    highestCarriedA: highestCarriedA(tested),
    withstand: shortestWithstand(tested),
  };
}

function shortestWithstand(tested: Tested): WithstandResult | null {
  const carriedA = highestCarriedA(tested);
  if (carriedA === null) return null;
  const main = tested.tests.leads.filter(({ place }) => place === 'main');
  const stands = main.flatMap((lead) => leadWithstand(lead, carriedA) ?? []);
  return stands.toSorted((a, b) => a.timeS - b.timeS)[0] ?? null;
}
