import { LFP_PLAUSIBILITY } from '../../calc/tables/lfp-plausibility.ts';
import type { CutOff } from '../../schema/live-tests/cut-off.ts';
import type { Nameplate } from '../../schema/nameplate.ts';
import type { CutOffLimit } from './results.ts';

/**
 * Up to `limit` a cut-off is in time, past `late` it has failed: where the checklist's bands end "sound" and begin
 * "failed", so that both say the same. Limits of cells are those of calc/tables/lfp-plausibility.ts, the rest our choice,
 * as there.
 */
const HIGH_CELL_V = { limit: LFP_PLAUSIBILITY.cellChargeV, late: 3.8 };
const LOW_CELL_V = { limit: LFP_PLAUSIBILITY.cellEmptyV, late: 2.0 };
const COLD_CHARGE_DEG_C = { limit: LFP_PLAUSIBILITY.lowestChargeDegC, late: -10 };
const HOT_DEG_C = { limit: 65, late: 80 };
/** A BMS must let the claimed current pass, so its limit lies above it. */
const CHARGE_CURRENT_TIMES = { limit: 1.25, late: 2 };
/** Cells differ too much in how cold they may be loaded: only a claim sets a limit. Our choice, as wide as for charge. */
const COLD_LOAD_LATE_K = 10;

/** What a trial is held against; null where nothing sets a limit, or volts are of a pack of unknown cells. */
export function cutOffLimit(trial: CutOff, nameplate: Nameplate): CutOffLimit | null {
  switch (trial.kind) {
    case 'highVoltage':
      return voltageLimit(trial, nameplate, HIGH_CELL_V);
    case 'lowVoltage':
      return voltageLimit(trial, nameplate, LOW_CELL_V);
    case 'chargeCurrent':
      return chargeCurrentLimit(nameplate);
    case 'coldCharge':
      return sensorLimit(COLD_CHARGE_DEG_C);
    case 'coldDischarge':
      return coldLoadLimit(nameplate);
    case 'hotCharge':
    case 'hotDischarge':
      return sensorLimit(HOT_DEG_C);
  }
}

interface Limit {
  limit: number;
  late: number;
}

/** Of the worst cell where its volts are known, else of the pack as so many cells. */
function voltageLimit(trial: CutOff, { cellsInSeries }: Nameplate, { limit, late }: Limit): CutOffLimit | null {
  if (trial.worstCellVoltageV !== undefined) return { of: 'cell', from: 'cell', limitV: limit, lateV: late };
  if (trial.packVoltageV === undefined || cellsInSeries === undefined) return null;
  return { of: 'pack', from: 'cell', limitV: limit * cellsInSeries, lateV: late * cellsInSeries };
}

function chargeCurrentLimit({ chargeCurrentA }: Nameplate): CutOffLimit | null {
  if (chargeCurrentA === undefined) return null;
  const { limit, late } = CHARGE_CURRENT_TIMES;
  return { of: 'current', from: 'nameplate', limitA: limit * chargeCurrentA, lateA: late * chargeCurrentA };
}

function sensorLimit({ limit, late }: Limit): CutOffLimit {
  return { of: 'sensor', from: 'cell', limitDegC: limit, lateDegC: late };
}

function coldLoadLimit({ dischargeLowestDegC: limitDegC }: Nameplate): CutOffLimit | null {
  if (limitDegC === undefined) return null;
  return { of: 'sensor', from: 'nameplate', limitDegC, lateDegC: limitDegC - COLD_LOAD_LATE_K };
}
