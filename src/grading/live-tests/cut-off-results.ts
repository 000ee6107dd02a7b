import { chargeCurrentCutOff } from '../../calc/charge-current-cut-off.ts';
import type { LimitBehaviour } from '../../calc/limit-behaviour.ts';
import { temperatureCutOff } from '../../calc/temperature-cut-off.ts';
import { voltageCutOff } from '../../calc/voltage-cut-off.ts';
import { CUT_OFF_KINDS, type CutOff, type CutOffKind } from '../../schema/live-tests/cut-off.ts';
import type { Nameplate } from '../../schema/nameplate.ts';
import type { Tested } from '../judged.ts';
import { cutOffLimit } from './cut-off-limits.ts';
import type { CutOffLimit, CutOffRemains, CutOffResult, CutOffTrial } from './results.ts';

/** What each cut-off did, trial by trial, and what is left to be tried or noted; every kind, tried or not. */
export function cutOffResults({ tests, nameplate }: Tested): CutOffResult[] {
  return CUT_OFF_KINDS.map((kind) => {
    const trials = tests.cutOffs.filter((cutOff) => cutOff.kind === kind).map((cutOff) => trialOf(cutOff, nameplate));
    return { kind, trials, remains: remainsOf(kind, trials) };
  });
}

function trialOf(cutOff: CutOffTrial['cutOff'], nameplate: Nameplate): CutOffTrial {
  const limit = cutOffLimit(cutOff, nameplate);
  const at = figureOf(cutOff);
  return { cutOff, limit, verdict: limit === null || at === null ? null : verdictOf(cutOff, limit, at) };
}

/** The figure at which it acted, or that was reached: volts of the worst cell before those of the pack. */
function figureOf({ kind, worstCellVoltageV, packVoltageV, currentA, sensorDegC }: CutOff): number | null {
  switch (kind) {
    case 'highVoltage':
    case 'lowVoltage':
      return worstCellVoltageV ?? packVoltageV ?? null;
    case 'chargeCurrent':
      return currentA ?? null;
    default:
      return sensorDegC ?? null;
  }
}

function verdictOf(cutOff: CutOff, limit: CutOffLimit, at: number): LimitBehaviour {
  const actedAt = bmsActed(cutOff) ? at : null;
  const reached = bmsActed(cutOff) ? null : at;
  const side = cutOff.kind === 'lowVoltage' || cutOff.kind.startsWith('cold') ? 'low' : 'high';
  switch (limit.of) {
    case 'current': {
      const { limitA, lateA } = limit;
      return chargeCurrentCutOff({
        limitA,
        lateA,
        actedAtA: actedAt,
        reachedA: reached,
        afterS: cutOff.afterS ?? null,
      });
    }
    case 'sensor': {
      const { limitDegC, lateDegC } = limit;
      return temperatureCutOff({ side, limitDegC, lateDegC, actedAtDegC: actedAt, reachedDegC: reached });
    }
    default: {
      const { limitV, lateV } = limit;
      return voltageCutOff({ side, limitV, lateV, actedAtV: actedAt, reachedV: reached });
    }
  }
}

/** What a thermal switch opened is a trial in which the BMS did not act. */
function bmsActed({ acted, by }: CutOff): boolean {
  return acted && by !== 'thermalSwitch';
}

function remainsOf(kind: CutOffKind, trials: readonly CutOffTrial[]): CutOffRemains[] {
  if (trials.length === 0) return ['trial'];
  const isSettled = trials.some(({ verdict }) => verdict !== null && verdict !== 'notTested');
  const acted = trials.map(({ cutOff }) => cutOff).filter((cutOff) => cutOff.acted);
  const remains: CutOffRemains[] = isSettled ? [] : [unsettledBy(trials)];
  if (isSettled && trials.every(({ cutOff }) => isByPackVoltsOnly(cutOff))) remains.push('cells');
  if (acted.length > 0 && acted.every(({ recovery }) => recovery === undefined)) remains.push('recovery');
  if (kind === 'lowVoltage' && acted.length > 0 && acted.every(({ wakeUp }) => wakeUp === undefined)) {
    remains.push('wakeUp');
  }
  return remains;
}

/** Why no trial settles it: no figure was noted, nothing sets a limit, or none went far enough. */
function unsettledBy(trials: readonly CutOffTrial[]): CutOffRemains {
  if (trials.every(({ cutOff }) => figureOf(cutOff) === null)) return 'figure';
  return trials.every(({ verdict }) => verdict === null) ? 'limit' : 'further';
}

/** Pack volts say when it acted, not how far the worst cell had gone by then: the item's grade stays open. */
export function isByPackVoltsOnly({ kind, packVoltageV, worstCellVoltageV }: CutOff): boolean {
  const isOfVolts = kind === 'highVoltage' || kind === 'lowVoltage';
  return isOfVolts && packVoltageV !== undefined && worstCellVoltageV === undefined;
}
