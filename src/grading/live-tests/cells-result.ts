import { cellOutliers } from '../../calc/cell-outliers.ts';
import { cellSpreadMv } from '../../calc/cell-spread.ts';
import { meanOf } from '../../calc/mean-of.ts';
import { restVoltageBand } from '../../calc/rest-voltage-band.ts';
import type { Tested } from '../judged.ts';
import type { CellSetResult, Outliers } from './results.ts';

interface Reading {
  number: number;
  value: number;
}

/** What each round of cell readings comes to, in the order in which they were made. */
export function cellsResults({ tests, nameplate }: Tested): CellSetResult[] {
  return tests.cellSets.map((set) => {
    const voltages = readings(set, ({ voltageV }) => voltageV);
    const bmsErrors = bmsErrorsOf(set);
    const errorsMv = bmsErrors.map(({ errorMv }) => Math.abs(errorMv));
    return {
      set,
      readCount: voltages.length,
      expectedCount: nameplate.cellsInSeries ?? null,
      spread: spreadOf(voltages),
      voltageOutliers: outliersOf(voltages),
      restBands: restBandsOf(set, voltages),
      resistance: resistanceOf(readings(set, ({ resistanceMohm }) => resistanceMohm)),
      bmsErrors,
      worstBmsErrorMv: errorsMv.length === 0 ? null : Math.max(...errorsMv),
    };
  });
}

type CellSet = CellSetResult['set'];
type Cell = CellSet['cells'][number];

function readings({ cells }: CellSet, read: (cell: Cell) => number | undefined): Reading[] {
  return cells.flatMap((cell) => {
    const value = read(cell);
    return value === undefined ? [] : [{ number: cell.number, value }];
  });
}

function spreadOf(voltages: readonly Reading[]): CellSetResult['spread'] {
  const [low, high] = ends(voltages);
  if (voltages.length < 2 || low === undefined || high === undefined) return null;
  return { ...cellSpreadMv(valuesOf(voltages)), lowNumber: low.number, highNumber: high.number };
}

/** The lowest and the highest; of equal ones the first. */
function ends(list: readonly Reading[]): [Reading | undefined, Reading | undefined] {
  return [list.toSorted((a, b) => a.value - b.value)[0], list.toSorted((a, b) => b.value - a.value)[0]];
}

function outliersOf(list: readonly Reading[]): Outliers {
  const found = cellOutliers(valuesOf(list));
  if (!found.ok) return found;
  return { ok: true, numbers: found.apartIndexes.flatMap((index) => list[index]?.number ?? []) };
}

function restBandsOf({ state, restedMin }: CellSet, voltages: readonly Reading[]): CellSetResult['restBands'] {
  if (state !== 'rested' || voltages.length === 0) return null;
  return voltages.map(({ number, value }) => ({
    number,
    band: restVoltageBand({ cellVoltageV: value, restedMin: restedMin ?? null }),
  }));
}

/** Spread as a share of the mean. Of one cell alone there is none to tell. */
function resistanceOf(list: readonly Reading[]): CellSetResult['resistance'] {
  const [low, high] = ends(list);
  if (low === undefined || high === undefined) return null;
  const meanMohm = meanOf(valuesOf(list));
  return {
    meanMohm,
    spreadFrac: list.length < 2 ? null : (high.value - low.value) / meanMohm,
    readCount: list.length,
    outliers: outliersOf(list),
  };
}

function bmsErrorsOf({ cells }: CellSet): CellSetResult['bmsErrors'] {
  return cells.flatMap(({ number, voltageV, bmsVoltageV }) =>
    voltageV === undefined || bmsVoltageV === undefined ? [] : [{ number, errorMv: (bmsVoltageV - voltageV) * 1000 }],
  );
}

function valuesOf(list: readonly Reading[]): number[] {
  return list.map(({ value }) => value);
}
