import * as v from 'valibot';
import type { LogMapping } from '../../logs/log-mapping.ts';
import type { LogCurve, LogRun } from '../../logs/log-run.ts';
import { momentMs } from '../../schema/figure-limits.ts';
import { type Curve, type Run, runSchema } from '../../schema/live-tests/run.ts';
import { localDay } from '../../text/format-day.ts';
import { restBefore } from './found-run.ts';

/** Our choice, with calc/complete-run.ts: a rest of at least so long is enough, whatever was before it. */
const ENOUGH_REST_S = 1800;
export const CURVE_POINTS = 600;

/** What a log says of a run and a person may say otherwise; kept beside it, so that the person's word is told from the log's. */
export interface SaidByLog {
  on?: string;
  end?: Run['end'];
  restMin?: number;
  cellStartDegC?: number;
  cellEndDegC?: number;
}

/** A run without its stamp; only the fields the schema names, so that each is checked. */
export type ReadRun = Omit<{ [K in keyof Run as string extends K ? never : K]: Run[K] }, 'made'>;

export interface RunRead {
  runs: readonly LogRun[];
  place: number;
  curve: LogCurve;
  logId: string;
  mapping: LogMapping;
  rowCount: number;
  startedAtMs: number | null;
}

/** A run as it is stored, from what was read. What the log does not hold is absent. */
export function runFromLog(read: RunRead): ReadRun {
  const { runs, place, curve, logId, mapping, rowCount } = read;
  const run = runs[place];
  if (run === undefined) throw new RangeError(`runFromLog: run must be one of ${runs.length}, got ${place}`);
  const said = saidByLog(read, run);
  const longestS = Math.max(0, ...run.gaps.map(({ lengthS }) => lengthS));
  return {
    ...said,
    ...kept('chargeAh', run.chargeAh),
    ...kept('energyWh', run.energyWh),
    ...kept('durationS', run.durationS),
    ...kept('currentA', run.meanCurrentA),
    ...kept('meanVoltageV', run.meanVoltageV),
    ...kept('startVoltageV', run.startVoltageV),
    // The last one while the pack was connected: 0 V afterwards says only that it was cut off.
    ...kept('endVoltageV', run.evidence.lastVoltageV ?? run.endVoltageV),
    log: {
      logId,
      firstLine: run.firstLine,
      lastLine: run.lastLine,
      rowCount,
      gapCount: run.gaps.length,
      ...(longestS > 0 && kept('longestGapS', longestS)),
      ...kept('counterChargeAh', run.counterChargeAh),
      mapping: { ...mapping },
      said: { ...said },
    },
    curve: storedCurve(curve, run.flow === 'in'),
    evidence: { ...run.evidence },
  };
}

function saidByLog({ runs, place, startedAtMs }: RunRead, run: LogRun): SaidByLog {
  const rest = restBefore(runs, place);
  const began = startedAtMs === null ? null : startedAtMs + run.startS * 1000;
  // A rest that begins with the log may have been longer: only enough is enough.
  const told = rest.known === 'afterCharge' || (rest.known === 'atLeast' && rest.restS >= ENOUGH_REST_S);
  return {
    ...(began !== null && v.is(momentMs, began) && { on: localDay(began, 0) }),
    end: run.end,
    ...(told && kept('restMin', rest.restS / 60)),
    ...(run.temperatures !== null && {
      cellStartDegC: run.temperatures.startDegC,
      cellEndDegC: run.temperatures.endDegC,
    }),
  };
}

/** Magnitudes, from the run's first point on. A column with a hole in it is left out whole, a hole being no number. */
function storedCurve(curve: LogCurve, turned: boolean): Curve {
  const startS = curve.timeS[0] ?? 0;
  const sign = turned ? -1 : 1;
  const whole = (values: readonly number[] | null, times = 1) =>
    values === null || values.length === 0 || !values.every(Number.isFinite)
      ? null
      : values.map((one) => one * times + 0);
  return {
    timeS: curve.timeS.map((at) => at - startS),
    voltageV: whole(curve.voltageV),
    currentA: whole(curve.currentA, sign),
    chargeAh: whole(curve.chargeAh, sign),
    temperatureDegC: whole(curve.temperatureDegC),
  };
}

/** A figure that the record takes; what no pack can have given (a misread column) is left out like one not read. */
function kept<K extends keyof Figures>(key: K, value: number | null): { [P in K]?: number } {
  return value !== null && v.is(FIGURES[key], value) ? ({ [key]: value } as { [P in K]: number }) : {};
}

const { chargeAh, energyWh, durationS, currentA, meanVoltageV, startVoltageV, endVoltageV } = runSchema.entries;
const { log, restMin } = runSchema.entries;
const { counterChargeAh, longestGapS } = log.wrapped.entries;
const FIGURES = {
  ...{ chargeAh, energyWh, durationS, currentA, meanVoltageV, startVoltageV, endVoltageV },
  ...{ counterChargeAh, longestGapS, restMin },
};
type Figures = typeof FIGURES;
