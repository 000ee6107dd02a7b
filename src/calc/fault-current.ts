import { requirePositive } from './rated-energy.ts';
import { requireNotNegative } from './require-not-negative.ts';
import { LFP_PLAUSIBILITY } from './tables/lfp-plausibility.ts';

export interface ShortedPack {
  cellsInSeries: number;
  /** Cells side by side in each step; one when left out. */
  cellsInParallel?: number;
  /** At 1 kHz, as a cell tester or a data sheet gives it. Taken before the DC one. */
  cellAcMohm?: number;
  cellDcMohm?: number;
  /** Bus bars, leads and joints in the path; nothing when left out, which is cells only. */
  otherMohm?: number;
  /** Open-circuit voltage of a cell; 3.65 when left out, the charge limit. */
  cellVoltageV?: number;
}

/**
 * Current into a dead short across a pack: open-circuit voltage over all resistance in the path.
 *
 * Shape   `upper` from AC resistance, which understates what a cell has against direct current; `lower` from DC
 *         resistance alone, which includes seconds of settling. Null when neither is known. What the BMS would
 *         do does not count.
 * Units   mΩ, V in; A out.
 * Throws  RangeError if a resistance or the voltage is not positive, otherMohm is negative, or a count is not whole from 1.
 * Source  Ohm's law; 3.65 V from tables/lfp-plausibility.ts
 * Check   tests/calc/fault-current.test.ts
 */
export function faultCurrentA(pack: ShortedPack): FaultCurrent | null {
  const { cellsInSeries, cellsInParallel = 1, cellAcMohm, cellDcMohm, otherMohm = 0 } = pack;
  const { cellVoltageV = LFP_PLAUSIBILITY.cellChargeV } = pack;
  requireCount('faultCurrentA: cellsInSeries', cellsInSeries);
  requireCount('faultCurrentA: cellsInParallel', cellsInParallel);
  requirePositive('faultCurrentA: cellVoltageV', cellVoltageV);
  requireNotNegative('faultCurrentA: otherMohm', otherMohm);
  const cellMohm = cellAcMohm ?? cellDcMohm;
  if (cellMohm === undefined) return null;
  requirePositive('faultCurrentA: cell resistance', cellMohm);
  const pathMohm = (cellsInSeries * cellMohm) / cellsInParallel + otherMohm;
  return {
    currentA: (cellsInSeries * cellVoltageV * 1000) / pathMohm,
    bound: cellAcMohm === undefined ? 'lower' : 'upper',
  };
}

export interface FaultCurrent {
  currentA: number;
  bound: 'upper' | 'lower';
}

function requireCount(name: string, count: number): void {
  if (!(Number.isInteger(count) && count >= 1))
    throw new RangeError(`${name} must be a whole number from 1, got ${count}`);
}
