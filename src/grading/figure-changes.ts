import { combinedUncertainty } from '../calc/combined-uncertainty.ts';
import { SHOWN_COVERAGE_FACTOR } from '../calc/meter-uncertainty.ts';
import { SAME_RATE_FRAC } from '../calc/runs-near-current.ts';
import type { Tested } from './judged.ts';
import { capacityResult } from './live-tests/capacity-result.ts';
import type { CapacityResult } from './live-tests/results.ts';

/** Charge, energy and cost as one record has them. Uncertainties are standard ones (k = 1). */
export interface FigureOnce {
  value: number;
  uncertainty: number | null;
  /** No run was complete: the pack may hold more. */
  atLeast: boolean;
}

export interface FigureChange {
  what: 'chargeAh' | 'energyWh' | 'costPerKwh';
  was: FigureOnce | null;
  now: FigureOnce | null;
  /** Of a cost; null where it is not known, and of the others. */
  currency: { was: string | null; now: string | null };
  /** Now less then, with its standard uncertainty; null where the two may not be set against one another. */
  difference: { value: number; uncertainty: number | null } | null;
  tells: Tells;
}

/** Which way a figure went, or why that cannot be told. */
export type Tells =
  | 'more'
  | 'less'
  | 'noDifference'
  | 'noUncertainty'
  | 'notMeasured'
  | 'atLeast'
  | 'otherCurrent'
  | 'otherCurrency'
  | 'otherBasis';

/** 20 is not within 10 % of 22.222… in binary; far below what any meter shows. */
const BINARY_SLACK_FRAC = 1e-9;

/**
 * Delivered charge and energy and the cost of a kilowatt-hour, then and now. A difference within its uncertainty at
 * k = 2 is none that can be told.
 *
 * The two records are taken as independent. Measured with the same meter their errors go the same way, so that the
 * difference is then surer than stated, never less sure.
 *
 * Units   Ah, Wh, a currency per kWh
 * Source  JCGM 100:2008 (GUM) 5.1.2 (number from memory), u² = u₁² + u₂² for a difference
 * Check   tests/grading/figure-changes.test.ts
 */
export function figureChanges(was: Tested, now: Tested): FigureChange[] {
  const [before, after] = [capacityOrNull(was), capacityOrNull(now)];
  const currents = sameCurrents(before, after);
  const charge = changeOf('chargeAh', chargeOf(before), chargeOf(after), currents);
  const energy = changeOf('energyWh', energyOf(before), energyOf(after), currents);
  return [charge, energy, costChange(before, after, currents)].filter((change) => change.was || change.now);
}

function costChange(before: CapacityResult | null, after: CapacityResult | null, currents: boolean): FigureChange {
  const [one, other] = [before?.cost ?? null, after?.cost ?? null];
  const currency = { was: one?.currency ?? null, now: other?.currency ?? null };
  const change = changeOf('costPerKwh', costOf(one), costOf(other), currents);
  if (one === null || other === null) return { ...change, currency };
  if (currency.was !== currency.now) return { ...change, currency, difference: null, tells: 'otherCurrency' };
  if (one.basis !== other.basis) return { ...change, currency, difference: null, tells: 'otherBasis' };
  return { ...change, currency };
}

function changeOf(
  what: FigureChange['what'],
  was: FigureOnce | null,
  now: FigureOnce | null,
  sameCurrent: boolean,
): FigureChange {
  const change = { what, was, now, currency: { was: null, now: null }, difference: null };
  if (was === null || now === null) return { ...change, tells: 'notMeasured' };
  if (was.atLeast || now.atLeast) return { ...change, tells: 'atLeast' };
  if (!sameCurrent) return { ...change, tells: 'otherCurrent' };
  const value = now.value - was.value;
  const uncertainty = uncertaintyOf(was, now);
  return { ...change, difference: { value, uncertainty }, tells: tellsOf(value, uncertainty) };
}

function tellsOf(value: number, uncertainty: number | null): Tells {
  if (value === 0) return 'noDifference';
  if (uncertainty === null) return 'noUncertainty';
  if (Math.abs(value) <= SHOWN_COVERAGE_FACTOR * uncertainty) return 'noDifference';
  return value > 0 ? 'more' : 'less';
}

function uncertaintyOf(was: FigureOnce, now: FigureOnce): number | null {
  if (was.uncertainty === null || now.uncertainty === null) return null;
  return combinedUncertainty([
    { sensitivity: -1, uncertainty: was.uncertainty },
    { sensitivity: 1, uncertainty: now.uncertainty },
  ]);
}

/** Only complete runs have a current that counts; where none was complete, that is said instead. */
function sameCurrents(before: CapacityResult | null, after: CapacityResult | null): boolean {
  const [one, other] = [before?.gentle?.currentA, after?.gentle?.currentA];
  if (one === undefined || other === undefined) return true;
  // As for the runs of one record, only that neither of the two is the one to be near: the harder decides.
  return Math.abs(one - other) <= SAME_RATE_FRAC * Math.max(one, other) * (1 + BINARY_SLACK_FRAC);
}

function chargeOf(capacity: CapacityResult | null): FigureOnce | null {
  const delivered = capacity?.delivered;
  if (!delivered || delivered.chargeAh === null) return null;
  return { value: delivered.chargeAh, uncertainty: delivered.chargeUncertaintyAh, atLeast: delivered.atLeast };
}

function energyOf(capacity: CapacityResult | null): FigureOnce | null {
  const delivered = capacity?.delivered;
  if (!delivered || delivered.energyWh === null) return null;
  return { value: delivered.energyWh, uncertainty: delivered.energyUncertaintyWh, atLeast: delivered.atLeast };
}

function costOf(cost: CapacityResult['cost']): FigureOnce | null {
  return cost === null ? null : { value: cost.perKwh, uncertainty: cost.uncertaintyPerKwh, atLeast: false };
}

/** A figure so far out that a calculation refuses it was not measured; the live tests of its own sheet say so. */
function capacityOrNull(tested: Tested): CapacityResult | null {
  try {
    return capacityResult(tested);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
