import { energyPlausibility } from './energy-plausibility.ts';
import { promisedEnergy } from './promised-energy.ts';
import { ratedEnergyWh } from './rated-energy.ts';
import { LFP_PLAUSIBILITY as LFP } from './tables/lfp-plausibility.ts';

/** What the checks read of a nameplate. Absent stays absent: a check that lacks a figure says nothing. */
export interface NameplateFigures {
  nominalVoltageV?: number;
  ratedCapacityAh?: number;
  ratedEnergyWh?: number;
  cellsInSeries?: number;
  continuousCurrentA?: number;
  peakCurrentA?: number;
  chargeVoltageV?: number;
  cutOffVoltageV?: number;
  chargeLowestDegC?: number;
  chargeHighestDegC?: number;
  dischargeLowestDegC?: number;
  dischargeHighestDegC?: number;
  claimedMassKg?: number;
  massKg?: number;
  lengthMm?: number;
  widthMm?: number;
  heightMm?: number;
}

/** A gentle remark about figures that do not fit together. Words are in text/nameplate-checks.ts. Never blocks. */
export type NameplateCheck =
  | { code: 'energyDisagrees'; claimedWh: number; computedWh: number; offFrac: number }
  | { code: 'specificEnergyAboveCell'; foundWhPerKg: number; cellWhPerKg: number; massFrom: 'found' | 'claimed' }
  | {
      code: 'specificEnergyAbovePack' | 'specificEnergyBelowPack';
      foundWhPerKg: number;
      lowWhPerKg: number;
      highWhPerKg: number;
      massFrom: 'found' | 'claimed';
    }
  | { code: 'energyDensityAboveCell'; foundWhPerL: number; cellWhPerL: number }
  | { code: 'massDisagrees'; claimedKg: number; foundKg: number; offFrac: number }
  | { code: 'voltageNotCells'; nominalV: number; cells: number; perCellV: number; cellNominalV: number }
  | { code: 'chargeVoltageAboveCell'; chargeV: number; cells: number; perCellV: number; cellChargeV: number }
  | { code: 'cutOffBelowCell'; cutOffV: number; cells: number; perCellV: number; cellEmptyV: number }
  | { code: 'chargeBelowFreezing'; lowestDegC: number; cellLowestDegC: number }
  | { code: 'continuousAboveOneC'; currentA: number; rateC: number }
  | { code: 'peakBelowContinuous'; peakA: number; continuousA: number }
  | { code: 'temperaturesSwapped'; of: 'charge' | 'discharge'; lowestDegC: number; highestDegC: number };

/** Our choice: a label rounds Ah, V and Wh singly; 2 % covers that. */
const ENERGY_TOLERANCE_FRAC = 0.02;
/** Our choice: kitchen and parcel scales are within this. */
const MASS_TOLERANCE_FRAC = 0.05;
/** Our choice: makers print 3.2 or 3.3 V a cell; 0.15 V off is another number of cells or another chemistry. */
const NOMINAL_TOLERANCE_V = 0.15;
/** Our choice: below what a label's own rounding can do, so that 14.6 V on four cells (3.65 V each) passes. */
const PER_CELL_SLACK_V = 0.0005;

/**
 * Everything on a nameplate that does not fit together or with what LFP cells do.
 *
 * Shape   figures in, a list of remarks out, in a fixed order; empty when nothing stands out.
 * Throws  never for figures that passed the schema (positive where they must be).
 * Source  src/calc/tables/lfp-plausibility.ts
 * Check   tests/calc/nameplate-checks.test.ts
 */
export function nameplateChecks(figures: NameplateFigures): NameplateCheck[] {
  return [...energyChecks(figures), ...massChecks(figures), ...cellChecks(figures), ...limitChecks(figures)];
}

function energyChecks(figures: NameplateFigures): NameplateCheck[] {
  const { ratedEnergyWh: claimedWh, ratedCapacityAh, nominalVoltageV } = figures;
  if (claimedWh === undefined || ratedCapacityAh === undefined || nominalVoltageV === undefined) return [];
  const computedWh = ratedEnergyWh({ ratedCapacityAh, nominalVoltageV });
  const offFrac = claimedWh / computedWh - 1;
  return Math.abs(claimedWh - computedWh) > ENERGY_TOLERANCE_FRAC * computedWh
    ? [{ code: 'energyDisagrees', claimedWh, computedWh, offFrac }]
    : [];
}

function massChecks(figures: NameplateFigures): NameplateCheck[] {
  const checks: NameplateCheck[] = [];
  const { claimedMassKg, massKg, lengthMm, widthMm, heightMm } = figures;
  if (claimedMassKg !== undefined && massKg !== undefined) {
    const offFrac = massKg / claimedMassKg - 1;
    if (Math.abs(offFrac) > MASS_TOLERANCE_FRAC) {
      checks.push({ code: 'massDisagrees', claimedKg: claimedMassKg, foundKg: massKg, offFrac });
    }
  }
  const energyWh = promisedEnergy(figures)?.energyWh;
  if (energyWh === undefined) return checks;
  const mass = massKg ?? claimedMassKg;
  const { specific, density } = energyPlausibility({
    energyWh,
    ...(mass === undefined ? {} : { massKg: mass }),
    ...(lengthMm === undefined ? {} : { lengthMm }),
    ...(widthMm === undefined ? {} : { widthMm }),
    ...(heightMm === undefined ? {} : { heightMm }),
  });
  if (specific !== null) {
    const { foundWhPerKg, band } = specific;
    const massFrom = massKg === undefined ? 'claimed' : 'found';
    const pack = { lowWhPerKg: LFP.packWhPerKg.low, highWhPerKg: LFP.packWhPerKg.high };
    if (band === 'aboveCell') {
      checks.push({ code: 'specificEnergyAboveCell', foundWhPerKg, cellWhPerKg: LFP.cellWhPerKg, massFrom });
    } else if (band !== 'asPack') {
      const code = band === 'abovePack' ? 'specificEnergyAbovePack' : 'specificEnergyBelowPack';
      checks.push({ code, foundWhPerKg, ...pack, massFrom });
    }
  }
  if (density?.band === 'aboveCell') {
    checks.push({ code: 'energyDensityAboveCell', foundWhPerL: density.foundWhPerL, cellWhPerL: LFP.cellWhPerL });
  }
  return checks;
}

function cellChecks({ cellsInSeries: cells, ...figures }: NameplateFigures): NameplateCheck[] {
  if (cells === undefined) return [];
  const checks: NameplateCheck[] = [];
  const { nominalVoltageV: nominalV, chargeVoltageV: chargeV, cutOffVoltageV: cutOffV } = figures;
  if (nominalV !== undefined && Math.abs(nominalV / cells - LFP.cellNominalV) > NOMINAL_TOLERANCE_V) {
    const perCellV = nominalV / cells;
    checks.push({ code: 'voltageNotCells', nominalV, cells, perCellV, cellNominalV: LFP.cellNominalV });
  }
  if (chargeV !== undefined && chargeV / cells > LFP.cellChargeV + PER_CELL_SLACK_V) {
    const perCellV = chargeV / cells;
    checks.push({ code: 'chargeVoltageAboveCell', chargeV, cells, perCellV, cellChargeV: LFP.cellChargeV });
  }
  if (cutOffV !== undefined && cutOffV / cells < LFP.cellEmptyV - PER_CELL_SLACK_V) {
    const perCellV = cutOffV / cells;
    checks.push({ code: 'cutOffBelowCell', cutOffV, cells, perCellV, cellEmptyV: LFP.cellEmptyV });
  }
  return checks;
}

function limitChecks(figures: NameplateFigures): NameplateCheck[] {
  const checks: NameplateCheck[] = [];
  const { chargeLowestDegC, continuousCurrentA, peakCurrentA, ratedCapacityAh } = figures;
  if (chargeLowestDegC !== undefined && chargeLowestDegC < LFP.lowestChargeDegC) {
    checks.push({
      code: 'chargeBelowFreezing',
      lowestDegC: chargeLowestDegC,
      cellLowestDegC: LFP.lowestChargeDegC,
    });
  }
  if (continuousCurrentA !== undefined && ratedCapacityAh !== undefined) {
    const rateC = continuousCurrentA / ratedCapacityAh;
    if (rateC > LFP.continuousRateC) checks.push({ code: 'continuousAboveOneC', currentA: continuousCurrentA, rateC });
  }
  if (peakCurrentA !== undefined && continuousCurrentA !== undefined && peakCurrentA < continuousCurrentA) {
    checks.push({ code: 'peakBelowContinuous', peakA: peakCurrentA, continuousA: continuousCurrentA });
  }
  for (const of of ['charge', 'discharge'] as const) {
    const lowestDegC = figures[`${of}LowestDegC`];
    const highestDegC = figures[`${of}HighestDegC`];
    if (lowestDegC !== undefined && highestDegC !== undefined && lowestDegC > highestDegC) {
      checks.push({ code: 'temperaturesSwapped', of, lowestDegC, highestDegC });
    }
  }
  return checks;
}
