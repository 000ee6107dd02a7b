import { dischargeShape, voltageAt } from './discharge-shape.ts';
import type { RunEnd } from './run-end-name.ts';

/** A run and what the log shows right after it, in order of time; the run's last sample is its last loaded one. */
export interface RunToJudge {
  flow: 'out' | 'in';
  /** Where the voltage was held and the current fell: its last as a share of its first. `null` where it was not held. */
  heldToFrac: number | null;
  timeS: ArrayLike<number>;
  voltageV: ArrayLike<number>;
  /** What followed without a pause: a hold at the last voltage, a current the other way, no current, or no more rows. */
  followedBy: RunFollowedBy;
  /** Samples right after the run, as many as there are within `AFTER_S`, and three at least where the log has them. */
  voltageAfterV: ArrayLike<number>;
  cellsInSeries?: number;
  cutOffVoltageV?: number;
}

export type RunFollowedBy = 'hold' | 'otherWay' | 'otherStep' | 'rest' | 'nothing';

/** Numbers behind the word; `null` where they could not be had. */
export interface RunEndEvidence {
  followedBy: RunFollowedBy;
  /** Half-way through the run's time. */
  middleVoltageV: number | null;
  /** The last one under load, before any fall of the terminals. */
  lastVoltageV: number | null;
  /** Fall from the middle to the last, as a share of the middle. */
  dropFrac: number | null;
  /** How far the last lies under the straight line through 60 % and 85 % of the time, as a share of the middle. */
  bendFrac: number | null;
  /** Slope over the last 1 % or 3 % of the time, the steeper, against that from 40 % to 80 %. */
  slopeRatio: number | null;
  /** Over the last 3 % of the time; negative falls. */
  lastSlopeMvPerS: number | null;
  voltagePerCellV: number | null;
  /** Smallest step the voltage was written in. */
  voltageStepV: number | null;
  lowestAfterV: number | null;
  highestAfterV: number | null;
}

/** Our choice: a capacitor at the terminals is empty by then, and a charger seldom on yet. */
export const AFTER_S = 120;

/**
 * Limits of the knee, as shares of the voltage half-way, so that they hold for a cell and for a pack of any number of
 * cells in series. Our choice, from logged LFP cells at C/20 to 1C: they are first met between 2.9 and 3.05 V a cell,
 * with 3 to 10 % of the time still to go, while on the plateau bend and drop stay under half of them.
 */
const KNEE = { dropFrac: 0.06, bendFrac: 0.035, slopeRatio: 8 };
/** The knee sets in: enough only where the pack itself then opened, as its weakest cell runs ahead of the others. */
const ONSET = { bendFrac: 0.01, slopeRatio: 10 };
/** Terminals under half the voltage of a moment before are disconnected: no cell falls so far in one sample. Our choice. */
const GONE_FRAC = 0.5;
/** Over its last loaded voltage by this much a pack has rebounded: our choice, above a meter's flicker. */
const REBOUND_FRAC = 1.002;
/** At or under this an LFP cell is empty whatever the curve looked like: usual discharge limit, common practice, no source. */
const EMPTY_CELL_V = 2.5;
/** A held current that fell by less than half was interrupted, not ended by its taper: our choice. */
const TAPERED_FRAC = 0.5;
/** A meter reads a cut-off within 0.5 %: our choice. */
const CUT_OFF_FRAC = 1.005;
/** A drop of fewer steps of the written voltage shows no knee: our choice. */
const FEWEST_STEPS = 3;

/**
 * How a run ended, in one of the closed words, with the numbers that say so.
 *
 * Shape   one run in, word and evidence out; the number of cells and the cut-off may help and are not needed.
 * Error   a judgement by shape: a pack stopped by hand within the knee reads as low voltage; one whose weakest cell cuts
 *         it off with no bend in the pack's voltage reads as a disconnect.
 * Throws  RangeError if the arrays differ in length, are empty, hold a value that is not finite, or time falls.
 * Source  our choice, limits above
 * Check   tests/calc/run-end.test.ts, tests/logs/measured-logs.test.ts
 */
export function runEnd(run: RunToJudge): { end: RunEnd; evidence: RunEndEvidence } {
  const { timeS, voltageV } = run;
  requireOrder(timeS, voltageV);
  const connected = connectedSamples(timeS, voltageV);
  const evidence = gather(run, connected.count);
  return { end: judge(run, evidence, connected.gone), evidence };
}

function judge(run: RunToJudge, evidence: RunEndEvidence, goneUnderLoad: boolean): RunEnd {
  const interrupted = run.followedBy === 'rest' || run.followedBy === 'otherWay' ? 'stopped' : 'unclear';
  if (run.heldToFrac !== null) return run.heldToFrac <= TAPERED_FRAC ? 'taper' : interrupted;
  if (run.flow === 'in') return interrupted;
  const gone = goneUnderLoad || goneAfter(run.voltageAfterV, evidence.lastVoltageV);
  if (kneeSeen(run, evidence)) return 'lowVoltage';
  if (gone) return onsetSeen(evidence) ? 'lowVoltage' : 'packDisconnect';
  return interrupted;
}

/** A pack that rebounds first was let go of by the load; what is pulled off afterwards says nothing. */
function goneAfter(voltageAfterV: ArrayLike<number>, lastVoltageV: number | null): boolean {
  if (lastVoltageV === null) return false;
  for (let place = 0; place < voltageAfterV.length; place++) {
    const voltageV = voltageAfterV[place] ?? 0;
    if (voltageV < GONE_FRAC * lastVoltageV) return true;
    if (voltageV > REBOUND_FRAC * lastVoltageV) return false;
  }
  return false;
}

function kneeSeen({ cutOffVoltageV }: RunToJudge, evidence: RunEndEvidence): boolean {
  const { dropFrac, bendFrac, slopeRatio, lastVoltageV, middleVoltageV, voltageStepV, voltagePerCellV } = evidence;
  if (cutOffVoltageV !== undefined && lastVoltageV !== null && lastVoltageV <= CUT_OFF_FRAC * cutOffVoltageV)
    return true;
  if (voltagePerCellV !== null && voltagePerCellV <= EMPTY_CELL_V) return true;
  if (dropFrac === null || bendFrac === null || slopeRatio === null) return false;
  if (middleVoltageV === null || lastVoltageV === null) return false;
  if (voltageStepV !== null && middleVoltageV - lastVoltageV < FEWEST_STEPS * voltageStepV) return false;
  return dropFrac >= KNEE.dropFrac && bendFrac >= KNEE.bendFrac && slopeRatio >= KNEE.slopeRatio;
}

function onsetSeen({ bendFrac, slopeRatio, middleVoltageV, voltageStepV }: RunEndEvidence): boolean {
  if (bendFrac === null || slopeRatio === null || middleVoltageV === null) return false;
  if (voltageStepV !== null && bendFrac * middleVoltageV < FEWEST_STEPS * voltageStepV) return false;
  return bendFrac >= ONSET.bendFrac && slopeRatio >= ONSET.slopeRatio;
}

/** How many samples count: those whose terminals are already gone, though current was still read, do not. */
function connectedSamples(timeS: ArrayLike<number>, voltageV: ArrayLike<number>): { count: number; gone: boolean } {
  const middleV = voltageAt(timeS, voltageV, { frac: 0.5, count: timeS.length });
  let count = timeS.length;
  while (count > 1 && (voltageV[count - 1] ?? 0) < GONE_FRAC * middleV && fellAtOnce(voltageV, count)) count--;
  // Samples between the fall and the bottom were trimmed one by one; only a fall within a few samples is a disconnect.
  return { count, gone: count < timeS.length };
}

/** Whether a fall to under half lies within the last few samples before `count`. */
function fellAtOnce(voltageV: ArrayLike<number>, count: number): boolean {
  const lowV = voltageV[count - 1] ?? 0;
  for (let back = 2; back <= 4 && count - back >= 0; back++) {
    const earlierV = voltageV[count - back] ?? 0;
    if (lowV < GONE_FRAC * earlierV) return true;
  }
  return false;
}

function gather(run: RunToJudge, count: number): RunEndEvidence {
  const { timeS, voltageV, voltageAfterV, cellsInSeries, followedBy } = run;
  const lastVoltageV = voltageV[count - 1] ?? null;
  const spanS = (timeS[count - 1] ?? 0) - (timeS[0] ?? 0);
  const extremes = lowAndHigh(voltageAfterV);
  const shape =
    spanS > 0 && lastVoltageV !== null ? dischargeShape(timeS, voltageV, { count, lastVoltageV, spanS }) : null;
  return {
    followedBy,
    middleVoltageV: shape?.middleVoltageV ?? null,
    lastVoltageV,
    dropFrac: shape?.dropFrac ?? null,
    bendFrac: shape?.bendFrac ?? null,
    slopeRatio: shape?.slopeRatio ?? null,
    lastSlopeMvPerS: shape?.lastSlopeMvPerS ?? null,
    voltagePerCellV: lastVoltageV !== null && cellsInSeries !== undefined ? lastVoltageV / cellsInSeries : null,
    voltageStepV: smallestStepV(voltageV, count),
    lowestAfterV: extremes?.lowV ?? null,
    highestAfterV: extremes?.highV ?? null,
  };
}

function smallestStepV(voltageV: ArrayLike<number>, count: number): number | null {
  let least = Number.POSITIVE_INFINITY;
  for (let place = 1; place < count; place++) {
    const step = Math.abs((voltageV[place] ?? 0) - (voltageV[place - 1] ?? 0));
    // Under a microvolt it is the arithmetic of the numbers, not of the meter.
    if (step > 1e-6 && step < least) least = step;
  }
  return Number.isFinite(least) ? least : null;
}

function lowAndHigh(values: ArrayLike<number>): { lowV: number; highV: number } | null {
  if (values.length === 0) return null;
  const list = Array.from(values);
  return { lowV: Math.min(...list), highV: Math.max(...list) };
}

function requireOrder(timeS: ArrayLike<number>, voltageV: ArrayLike<number>): void {
  if (timeS.length < 1 || timeS.length !== voltageV.length) {
    throw new RangeError(
      `runEnd: arrays must have one length of 1 or more, got ${timeS.length} and ${voltageV.length}`,
    );
  }
  for (let place = 0; place < timeS.length; place++) {
    if (!Number.isFinite(timeS[place]) || !Number.isFinite(voltageV[place])) {
      throw new RangeError(`runEnd: values must be finite, got ${timeS[place]} s, ${voltageV[place]} V`);
    }
    if (place > 0 && (timeS[place] ?? 0) < (timeS[place - 1] ?? 0)) {
      throw new RangeError(`runEnd: time must not fall, got ${timeS[place]} after ${timeS[place - 1]}`);
    }
  }
}
