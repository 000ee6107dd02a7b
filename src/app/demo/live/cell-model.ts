import { OCV_LFP } from '../../../calc/tables/ocv-lfp.ts';

/** An invented pack for the model: what each cell of a string holds, and how it resists. */
export interface ModelPack {
  /** Charge of each cell when full, down to 2.5 V. */
  cellsAh: readonly number[];
  /** Resistance of one cell with its links. */
  cellMohm: number;
}

export interface ModelRun {
  currentA: number;
  /** The load or the BMS opens at this voltage of the pack. */
  endVoltageV: number;
  /** A switch opens the terminals after this long, whatever the voltage. */
  opensAfterS?: number;
  stepS: number;
}

export interface ModelRow {
  timeS: number;
  voltageV: number;
  currentA: number;
}

/** Unloaded before and after, so that a reader sees where the run begins and ends. Our choice. */
const REST_ROWS = 6;
/** How steeply the last hundredths of charge fall towards empty, and how far. Our choice, to look like logged cells. */
const KNEE_FRAC = 0.012;
const KNEE_V = 0.6;
/** Voltage lags behind the current: slow polarisation as a share of the resistance, and its time constant. Our choice. */
const LAG = { share: 0.6, timeS: 240 };

/**
 * A made-up constant-current run of a full pack: open-circuit voltage by charge, less the drop at its resistance, with
 * a knee where a cell runs empty. Deterministic; for the demo bench only, and never a check of anything.
 */
export function modelRun(pack: ModelPack, run: ModelRun): ModelRow[] {
  const rows: ModelRow[] = [];
  const push = (currentA: number, voltageV: number) =>
    rows.push({ timeS: rows.length * run.stepS, voltageV: Math.max(0, voltageV), currentA });
  const fullV = packVoltageV(pack, 0);
  for (let row = 0; row < REST_ROWS; row++) push(0, fullV);

  let drawnAh = 0;
  let loadedS = 0;
  for (;;) {
    const lagging = 1 + LAG.share * (1 - Math.exp(-loadedS / LAG.timeS));
    const dropV = (run.currentA * pack.cellMohm * lagging * pack.cellsAh.length) / 1000;
    const voltageV = packVoltageV(pack, drawnAh) - dropV;
    push(run.currentA, voltageV);
    if (run.opensAfterS !== undefined && loadedS >= run.opensAfterS) return disconnected(rows, run.stepS);
    if (voltageV <= run.endVoltageV) return rested(rows, packVoltageV(pack, drawnAh) - dropV / 4, run.stepS);
    loadedS += run.stepS;
    drawnAh += (run.currentA * run.stepS * rateFactor(pack, run.currentA)) / 3600;
  }
}

/** A harder run leaves a little more behind: as if it drew more, by a small power of the current. Our choice. */
function rateFactor({ cellsAh }: ModelPack, currentA: number): number {
  return (currentA / (0.2 * Math.min(...cellsAh))) ** 0.011;
}

function packVoltageV({ cellsAh }: ModelPack, drawnAh: number): number {
  return cellsAh.reduce((sum, cellAh) => sum + cellVoltageV(1 - drawnAh / cellAh), 0);
}

function cellVoltageV(chargeFrac: number): number {
  return openCircuitV(Math.max(0, chargeFrac)) - KNEE_V * Math.exp(-Math.max(-0.02, chargeFrac) / KNEE_FRAC);
}

/** The table of open-circuit voltages, straight between its rows. */
function openCircuitV(chargeFrac: number): number {
  const chargePct = Math.min(100, chargeFrac * 100);
  const above = OCV_LFP.findLast((row) => row.chargePct >= chargePct) ?? OCV_LFP[0];
  const below = OCV_LFP.find((row) => row.chargePct <= chargePct) ?? above;
  if (above.chargePct === below.chargePct) return above.cellV;
  const share = (chargePct - below.chargePct) / (above.chargePct - below.chargePct);
  return below.cellV + share * (above.cellV - below.cellV);
}

function disconnected(rows: ModelRow[], stepS: number): ModelRow[] {
  for (let row = 0; row < REST_ROWS; row++) rows.push({ timeS: rows.length * stepS, voltageV: 0, currentA: 0 });
  return rows;
}

function rested(rows: ModelRow[], voltageV: number, stepS: number): ModelRow[] {
  for (let row = 0; row < REST_ROWS; row++) rows.push({ timeS: rows.length * stepS, voltageV, currentA: 0 });
  return rows;
}
