import type { UnitChoice } from '../units/unit-choice.ts';
import { formatFixed, formatPercent, formatTyped } from './format-number.ts';
import { formatMass, formatTemperature, formatValue, withUnit } from './format-unit.ts';

/** The remarks of calc/nameplate-checks.ts, as this layer reads them. */
export type SaidNameplateCheck =
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

/** One sentence per remark: what does not fit, against what, and how sure that is. */
export function nameplateCheckSentence(check: SaidNameplateCheck, units: UnitChoice): string {
  switch (check.code) {
    case 'energyDisagrees': {
      const more = check.offFrac > 0 ? 'more' : 'less';
      return `The label says ${wh(check.claimedWh)}, ${formatPercent(Math.abs(check.offFrac))} ${more} than its own Ah × V, ${wh(check.computedWh)}.`;
    }
    case 'specificEnergyAboveCell':
      return `${perKg(check.foundWhPerKg)} at the ${massWord(check.massFrom)} is more than a bare cell on a data sheet gives (${perKg(check.cellWhPerKg)}): too light for its promise, or a slip in typing.`;
    case 'specificEnergyAbovePack':
      return `${perKg(check.foundWhPerKg)} at the ${massWord(check.massFrom)} is high for a pack; ${check.lowWhPerKg} to ${perKg(check.highWhPerKg)} is typical (common practice, no source).`;
    case 'specificEnergyBelowPack':
      return `${perKg(check.foundWhPerKg)} at the ${massWord(check.massFrom)} is low for a pack; ${check.lowWhPerKg} to ${perKg(check.highWhPerKg)} is typical (common practice, no source).`;
    case 'energyDensityAboveCell':
      return `${withUnit(formatFixed(check.foundWhPerL, 0), 'Wh/L')} is more than a bare cell on a data sheet gives (${formatValue(check.cellWhPerL, 'Wh/L')}): too small for its promise, or a slip in typing.`;
    case 'massDisagrees': {
      const more = check.offFrac > 0 ? 'more' : 'less';
      return `The pack weighs ${formatMass(check.foundKg, units)}, ${formatPercent(Math.abs(check.offFrac))} ${more} than the ${formatMass(check.claimedKg, units)} claimed.`;
    }
    case 'voltageNotCells':
      return `${formatValue(check.nominalV, 'V')} over ${check.cells} cells is ${perCell(check.perCellV)} a cell; an LFP cell has ${formatValue(check.cellNominalV, 'V')} (cell data sheet).`;
    case 'chargeVoltageAboveCell':
      return `A charge voltage of ${formatValue(check.chargeV, 'V')} is ${perCell(check.perCellV)} a cell, above the ${formatValue(check.cellChargeV, 'V')} of a cell data sheet. Do not charge to it on this label alone.`;
    case 'cutOffBelowCell':
      return `A cut-off of ${formatValue(check.cutOffV, 'V')} is ${perCell(check.perCellV)} a cell, below the ${formatValue(check.cellEmptyV, 'V')} of a cell data sheet.`;
    case 'chargeBelowFreezing':
      return `The label allows charging at ${formatTemperature(check.lowestDegC, units)}; cell data sheets allow it from ${formatTemperature(check.cellLowestDegC, units)}. Look for a heater.`;
    case 'continuousAboveOneC':
      return `${formatValue(check.currentA, 'A')} continuous is ${formatFixed(check.rateC, 1)} C; the cell data sheet at hand gives 1 C.`;
    case 'peakBelowContinuous':
      return `The peak current, ${formatValue(check.peakA, 'A')}, is below the continuous one, ${formatValue(check.continuousA, 'A')}: are they swapped?`;
    case 'temperaturesSwapped':
      return `The lowest ${check.of} temperature, ${formatTemperature(check.lowestDegC, units)}, is above the highest, ${formatTemperature(check.highestDegC, units)}: are they swapped?`;
  }
}

const wh = (energyWh: number) => withUnit(formatTyped(energyWh), 'Wh');
const perKg = (whPerKg: number) => withUnit(formatFixed(whPerKg, 0), 'Wh/kg');
const perCell = (voltageV: number) => withUnit(formatFixed(voltageV, 2), 'V');
const massWord = (from: 'found' | 'claimed') => (from === 'found' ? 'mass found' : 'mass claimed');
