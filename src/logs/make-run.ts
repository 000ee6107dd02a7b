import { chargeFromSamplesAh } from '../calc/charge-from-samples.ts';
import { energyFromSamplesWh } from '../calc/energy-from-samples.ts';
import { AFTER_S, type RunEndEvidence, type RunFollowedBy, runEnd } from '../calc/run-end.ts';
import { timeGaps } from '../calc/time-gaps.ts';
import type { LoadedPart } from './cut-stretch.ts';
import type { LogColumns, LogReading } from './log-reading.ts';
import type { LogRun, RunTemperatures } from './log-run.ts';

export interface RunPlace {
  /** Last loaded row before it, or the first of the stretch; `null` where it begins the stretch itself. */
  restFromIndex: number | null;
  stretchLastIndex: number;
  followedBy: RunFollowedBy;
}

/** What may help to tell an end; not needed. */
export interface RunEndHelp {
  cellsInSeries?: number;
  cutOffVoltageV?: number;
}

/** Our choice: rows looked at after a run, however far apart they are. */
const FEWEST_AFTER = 3;

/** The facts of one loaded part, and how it ended. */
export function makeRun(
  { columns }: LogReading,
  { part, place, help }: { part: LoadedPart; place: RunPlace; help: RunEndHelp },
): LogRun {
  const { firstIndex, lastIndex, flow, held } = part;
  const cut = (values: Float64Array) => values.subarray(firstIndex, lastIndex + 1);
  const timeS = cut(columns.timeS);
  const currentA = columns.currentA === null ? new Float64Array(timeS.length) : cut(columns.currentA);
  const voltageV = columns.voltageV === null ? null : cut(columns.voltageV);
  const chargeAh = Math.abs(chargeFromSamplesAh({ timeS, currentA }));
  const energyWh = voltageV === null ? null : Math.abs(energyFromSamplesWh({ timeS, voltageV, currentA }));
  const startS = timeS[0] ?? 0;
  const endS = timeS.at(-1) ?? 0;
  const durationS = endS - startS;
  const heldToFrac = held ? Math.abs((currentA.at(-1) ?? 0) / (currentA[0] ?? 1)) : null;
  const judged =
    voltageV === null
      ? { end: 'unclear' as const, evidence: noEvidence(place.followedBy) }
      : runEnd({
          flow,
          heldToFrac,
          timeS,
          voltageV,
          followedBy: place.followedBy,
          voltageAfterV: voltageAfter(columns, lastIndex, place.stretchLastIndex),
          ...help,
        });
  return {
    kind: held ? 'hold' : flow === 'out' ? 'discharge' : 'charge',
    flow,
    firstIndex,
    lastIndex,
    firstLine: columns.line[firstIndex] ?? 0,
    lastLine: columns.line[lastIndex] ?? 0,
    startS,
    endS,
    durationS,
    chargeAh,
    energyWh,
    meanVoltageV: energyWh === null || !(chargeAh > 0) ? null : energyWh / chargeAh,
    meanCurrentA: durationS > 0 ? (chargeAh * 3600) / durationS : null,
    startVoltageV: voltageV?.[0] ?? null,
    endVoltageV: voltageV?.at(-1) ?? null,
    restBeforeS: place.restFromIndex === null ? null : startS - (columns.timeS[place.restFromIndex] ?? startS),
    gaps: timeGaps(timeS).map((gap) => ({ ...gap, index: gap.index + firstIndex })),
    ...judged,
    counterChargeAh: counted(columns, part),
    temperatures: temperaturesOf(columns, part),
  };
}

/** Voltages right after row `lastIndex`, as far as they bear on how a run ended. */
export function voltageAfter(
  { timeS, voltageV }: LogColumns,
  lastIndex: number,
  stretchLastIndex: number,
): Float64Array {
  if (voltageV === null) return new Float64Array(0);
  let to = lastIndex;
  while (to < stretchLastIndex) {
    const awayS = (timeS[to + 1] as number) - (timeS[lastIndex] as number);
    if (awayS > AFTER_S && to - lastIndex >= FEWEST_AFTER) break;
    to++;
  }
  return voltageV.subarray(lastIndex + 1, to + 1);
}

export function temperaturesOf(
  { temperatureDegC }: LogColumns,
  { firstIndex, lastIndex }: { firstIndex: number; lastIndex: number },
): RunTemperatures | null {
  const read = temperatureDegC?.subarray(firstIndex, lastIndex + 1).filter((degC) => !Number.isNaN(degC));
  const [startDegC, endDegC] = [read?.[0], read?.at(-1)];
  if (read === undefined || startDegC === undefined || endDegC === undefined) return null;
  return { startDegC, endDegC, highestDegC: read.reduce((highest, degC) => Math.max(highest, degC), startDegC) };
}

function counted(columns: LogColumns, { firstIndex, lastIndex, flow }: LoadedPart): number | null {
  const counter = (flow === 'out' ? columns.counterOutAh : columns.counterInAh) ?? columns.counterNetAh;
  if (counter === null) return null;
  return Math.abs((counter[lastIndex] as number) - (counter[firstIndex] as number));
}

function noEvidence(followedBy: RunFollowedBy): RunEndEvidence {
  return {
    followedBy,
    middleVoltageV: null,
    lastVoltageV: null,
    dropFrac: null,
    bendFrac: null,
    slopeRatio: null,
    lastSlopeMvPerS: null,
    voltagePerCellV: null,
    voltageStepV: null,
    lowestAfterV: null,
    highestAfterV: null,
  };
}
