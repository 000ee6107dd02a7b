import { runEnd } from '../calc/run-end.ts';
import { timeGaps } from '../calc/time-gaps.ts';
import type { LogReading, LogStretch } from './log-reading.ts';
import type { LogRun } from './log-run.ts';
import { type RunEndHelp, temperaturesOf, voltageAfter } from './make-run.ts';

/** Our choice: terminals that lose half their voltage within three rows are gone. */
const GONE_FRAC = 0.5;
const GONE_ROWS = 3;

/**
 * A whole stretch of a log without current: voltages, no charge, no energy. Its end is judged where the voltage is
 * lowest, or where the terminals went; nobody can say of it that a load was taken off.
 */
export function voltageOnlyRun(
  { columns }: LogReading,
  { firstIndex, lastIndex }: LogStretch,
  help: RunEndHelp,
): LogRun {
  const timeS = columns.timeS.subarray(firstIndex, lastIndex + 1);
  const voltageV = columns.voltageV?.subarray(firstIndex, lastIndex + 1) ?? new Float64Array(timeS.length);
  const low = lowestBeforeGone(voltageV);
  const { end, evidence } = runEnd({
    flow: 'out',
    heldToFrac: null,
    timeS: timeS.subarray(0, low + 1),
    voltageV: voltageV.subarray(0, low + 1),
    followedBy: low === voltageV.length - 1 ? 'nothing' : 'rest',
    voltageAfterV: voltageAfter(columns, firstIndex + low, lastIndex),
    ...help,
  });
  const [startS, endS] = [timeS[0] as number, timeS.at(-1) as number];
  return {
    kind: 'voltageOnly',
    flow: null,
    firstIndex,
    lastIndex,
    firstLine: columns.line[firstIndex] as number,
    lastLine: columns.line[lastIndex] as number,
    startS,
    endS,
    durationS: endS - startS,
    chargeAh: null,
    energyWh: null,
    meanVoltageV: meanOverTime(timeS, voltageV),
    meanCurrentA: null,
    startVoltageV: voltageV[0] ?? null,
    endVoltageV: voltageV.at(-1) ?? null,
    restBeforeS: null,
    gaps: timeGaps(timeS).map((gap) => ({ ...gap, index: gap.index + firstIndex })),
    end: end === 'stopped' ? 'unclear' : end,
    evidence,
    counterChargeAh: null,
    temperatures: temperaturesOf(columns, { firstIndex, lastIndex }),
  };
}

function lowestBeforeGone(voltageV: Float64Array): number {
  let low = 0;
  for (let at = 1; at < voltageV.length; at++) {
    for (let back = 1; back <= GONE_ROWS && back <= at; back++) {
      if ((voltageV[at] as number) < GONE_FRAC * (voltageV[at - back] as number)) return at - back;
    }
    if ((voltageV[at] as number) <= (voltageV[low] as number)) low = at;
  }
  return low;
}

function meanOverTime(timeS: Float64Array, voltageV: Float64Array): number | null {
  let sum = 0;
  for (let at = 1; at < timeS.length; at++) {
    sum +=
      ((timeS[at] as number) - (timeS[at - 1] as number)) * ((voltageV[at] as number) + (voltageV[at - 1] as number));
  }
  const spanS = (timeS.at(-1) ?? 0) - (timeS[0] ?? 0);
  return spanS > 0 ? sum / 2 / spanS : (voltageV[0] ?? null);
}
