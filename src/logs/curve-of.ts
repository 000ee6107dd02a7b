import { thinnedIndexes } from '../calc/thinned-indexes.ts';
import type { LogColumns, LogReading } from './log-reading.ts';
import type { LogCurve } from './log-run.ts';

/**
 * Points of a run (or of any rows of one stretch) to draw, thinned so that no dip, peak or knee is lost; dips and peaks
 * of voltage, current and temperature are kept.
 */
export function curveOf(
  { columns }: LogReading,
  { firstIndex, lastIndex }: { firstIndex: number; lastIndex: number },
  maxPoints: number,
): LogCurve {
  const cut = (values: Float64Array | null) => values?.subarray(firstIndex, lastIndex + 1) ?? null;
  const timeS = columns.timeS.subarray(firstIndex, lastIndex + 1);
  const [voltageV, currentA, degC] = [cut(columns.voltageV), cut(columns.currentA), cut(columns.temperatureDegC)];
  const series = [voltageV, currentA, degC].filter((values) => values !== null);
  const kept = thinnedIndexes({ x: timeS, series, mostPoints: maxPoints });
  const pick = (values: Float64Array) => kept.map((at) => values[at] as number);
  return {
    timeS: pick(timeS),
    voltageV: voltageV === null ? [] : pick(voltageV),
    currentA: currentA === null ? null : pick(currentA),
    chargeAh: currentA === null ? null : pick(runningChargeAh(timeS, currentA)),
    temperatureDegC: degC === null ? null : pick(degC),
  };
}

/** The whole log, one curve for each stretch; together at most `maxPoints`, and ten at least for each. */
export function overviewOf(reading: LogReading, maxPoints: number): LogCurve[] {
  const rows = reading.columns.timeS.length;
  return reading.stretches.map((stretch) => {
    const share = (stretch.lastIndex - stretch.firstIndex + 1) / rows;
    return curveOf(reading, stretch, Math.max(10, Math.floor(maxPoints * share)));
  });
}

/** Trapezoid, as `chargeFromSamplesAh`, at every row. */
function runningChargeAh(timeS: LogColumns['timeS'], currentA: Float64Array): Float64Array {
  const chargeAh = new Float64Array(timeS.length);
  let doubleAs = 0;
  for (let at = 1; at < timeS.length; at++) {
    const spanS = (timeS[at] as number) - (timeS[at - 1] as number);
    doubleAs += spanS * ((currentA[at] as number) + (currentA[at - 1] as number));
    chargeAh[at] = doubleAs / 7200;
  }
  return chargeAh;
}
