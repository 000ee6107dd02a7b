import type { LimitBehaviour } from '../../calc/limit-behaviour.ts';
import {
  type OvercurrentBehaviour,
  type OvercurrentKind,
  overcurrentBehaviour,
} from '../../calc/overcurrent-behaviour.ts';
import type { CutOffKind } from '../../schema/live-tests/cut-off.ts';
import type { LiveTests } from '../../schema/live-tests/live-tests.ts';
import type { Trip } from '../../schema/live-tests/trip.ts';
import type { LiveResults } from '../live-tests/results.ts';
import { tripNoted } from '../live-tests/trip-noted.ts';
import {
  PROTECTION_KINDS,
  type Protection,
  type ProtectionKind,
  type ProtectionSides,
  type ProtectionState,
} from './side-by-side.ts';

type Found = Omit<Protection, 'kind'>;

const NOT_TESTED: Found = { state: 'notTested', trialCount: 0, heatOnlyCount: 0, sides: null };
/** Of what was tried the worst counts. Nothing is said of what was not: an untried side makes nothing better. */
const WORST_FIRST = ['didNot', 'actedLate', 'acted'] as const;
const STATE_OF: Record<(typeof WORST_FIRST)[number], ProtectionState> = {
  acted: 'acts',
  actedLate: 'actsLate',
  didNot: 'doesNot',
};

/**
 * What each protection did when it was tried, by the live tests alone; one that was never driven far enough to tell is
 * not tested, and rests on no trial. How trials are joined is our choice throughout, because no standard joins them.
 *
 * Shape   every kind, in the order of PROTECTION_KINDS.
 * Source  our choice; single trials are judged by calc/overcurrent-behaviour.ts and calc/limit-behaviour.ts
 * Check   tests/grading/side-by-side/protections.test.ts
 */
export function protectionsOf(results: Pick<LiveResults, 'cutOffs' | 'fuse'>, tests: LiveTests): Protection[] {
  const found: Record<ProtectionKind, Found> = {
    overCurrent: overCurrent(results, tests),
    short: short(tests),
    // A cold cell is harmed by charge, not by load: what became of a load says nothing here.
    lowTemperature: tried(results, 'coldCharge'),
    highTemperature: heat(results),
    lowVoltage: tried(results, 'lowVoltage'),
    highVoltage: tried(results, 'highVoltage'),
  };
  return PROTECTION_KINDS.map((kind) => ({ kind, ...found[kind] }));
}

/**
 * What only heat ended, no protection did: our choice, because nothing then watches the current, and what opens does so
 * by what it should have kept from happening. An item that asks for the over-current figure grades it alike.
 */
const BEHAVIOUR_OF: Record<OvercurrentBehaviour['verdict'], LimitBehaviour> = {
  tripped: 'acted',
  heatOnly: 'didNot',
  noneSeen: 'didNot',
  notTested: 'notTested',
};

/**
 * Each trip by itself: tripped at once or after a delay, it acted. A short is left out: it is met by a protection of its
 * own, and one that sees a short may see no overload.
 */
function overCurrent({ fuse: { continuousCurrentA } }: Pick<LiveResults, 'fuse'>, { trips }: LiveTests): Found {
  const overloads = trips.filter((trip) => trip.short !== true);
  const verdicts = overloads.map(
    (trip) => overcurrentBehaviour({ trips: [tripNoted(trip)], continuousCurrentA }).verdict,
  );
  const heatOnlyCount = verdicts.filter((verdict) => verdict === 'heatOnly').length;
  return { ...worstOf(verdicts.map((verdict) => BEHAVIOUR_OF[verdict])), heatOnlyCount };
}

/** A short must open at once, by the same second that parts an instant trip from a delayed one; later is late. */
function short({ trips }: LiveTests): Found {
  const kinds = trips.filter((trip) => trip.short === true).map(shortKind);
  const heatOnlyCount = kinds.filter((kind) => kind === 'heatOnly').length;
  return { ...worstOf(kinds.map((kind) => SHORT_BEHAVIOUR_OF[kind])), heatOnlyCount };
}

const SHORT_BEHAVIOUR_OF: Record<OvercurrentKind | 'held', LimitBehaviour> = {
  instant: 'acted',
  delayed: 'actedLate',
  heatOnly: BEHAVIOUR_OF.heatOnly,
  held: 'didNot',
};

function shortKind(trip: Trip): OvercurrentKind | 'held' {
  return overcurrentBehaviour({ trips: [tripNoted(trip)], continuousCurrentA: null }).kinds[0] ?? 'held';
}

/** Charge and load are cut apart from one another, so the cell says which of them was tried far enough to tell. */
function heat(results: Pick<LiveResults, 'cutOffs'>): Found {
  const found = tried(results, 'hotCharge', 'hotDischarge');
  const isTold = (kind: CutOffKind) => tried(results, kind).trialCount > 0;
  const sides: ProtectionSides = !isTold('hotCharge') ? 'load' : isTold('hotDischarge') ? 'both' : 'charge';
  return found.trialCount === 0 ? found : { ...found, sides };
}

function tried({ cutOffs }: Pick<LiveResults, 'cutOffs'>, ...kinds: CutOffKind[]): Found {
  return worstOf(
    cutOffs.flatMap(({ kind, trials }) => (kinds.includes(kind) ? trials.flatMap(({ verdict }) => verdict ?? []) : [])),
  );
}

function worstOf(behaviours: readonly LimitBehaviour[]): Found {
  const telling = behaviours.filter((behaviour) => behaviour !== 'notTested');
  const worst = WORST_FIRST.find((behaviour) => telling.includes(behaviour));
  return worst === undefined
    ? NOT_TESTED
    : { state: STATE_OF[worst], trialCount: telling.length, heatOnlyCount: 0, sides: null };
}
