import { meanOf } from './mean-of.ts';
import { requirePositive } from './rated-energy.ts';
import { type RunCharge, requireRuns, runsNearCurrent } from './runs-near-current.ts';

/** A complete run (complete-run.ts). `energyWh` is null where voltage was not logged. */
export interface RunDelivery extends RunCharge {
  energyWh: number | null;
}

export interface CapacityNearRate extends RunDelivery {
  /** How many runs the means are of. */
  count: number;
}

/** 0.2C is the usual rating current of such packs; IEC 61960-3 and IEC 62620, from memory. */
const USUAL_RATE_PER_H = 0.2;

/**
 * What the pack gives at one rate: the means of the complete runs within ±10 % of the current nearest that rate.
 *
 * Shape   n complete runs in; null if there is none. Of two currents equally near, the gentler counts.
 *         The mean energy is of those runs that have one; null if none has.
 * Units   A, Ah, Wh, 1/h in; A, Ah, Wh out.
 * Throws  RangeError if a figure is not positive.
 * Source  0.2C: see USUAL_RATE_PER_H; ±10 %: our choice, runs-near-current.ts
 * Check   tests/calc/capacity-near-rate.test.ts
 */
export function capacityNearRateAh(
  runs: readonly RunDelivery[],
  { ratedCapacityAh, ratePerH = USUAL_RATE_PER_H }: { ratedCapacityAh: number; ratePerH?: number },
): CapacityNearRate | null {
  requirePositive('capacityNearRateAh: ratedCapacityAh', ratedCapacityAh);
  requirePositive('capacityNearRateAh: ratePerH', ratePerH);
  requireRuns('capacityNearRateAh', runs);
  for (const { energyWh } of runs) {
    if (energyWh !== null) requirePositive('capacityNearRateAh: energyWh', energyWh);
  }
  const nearestA = nearestCurrentA(runs, ratePerH * ratedCapacityAh);
  if (nearestA === null) return null;
  const counted = runsNearCurrent(runs, nearestA);
  const energiesWh = counted.flatMap(({ energyWh }) => (energyWh === null ? [] : [energyWh]));
  return {
    currentA: meanOf(counted.map((run) => run.currentA)),
    chargeAh: meanOf(counted.map((run) => run.chargeAh)),
    energyWh: energiesWh.length === 0 ? null : meanOf(energiesWh),
    count: counted.length,
  };
}

function nearestCurrentA(runs: readonly RunDelivery[], wantedA: number): number | null {
  const currentsA = runs.map((run) => run.currentA).sort((a, b) => a - b);
  let nearestA: number | null = null;
  for (const currentA of currentsA) {
    if (nearestA === null || Math.abs(currentA - wantedA) < Math.abs(nearestA - wantedA)) nearestA = currentA;
  }
  return nearestA;
}
