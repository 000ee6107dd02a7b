import type { LogMapping } from '../../logs/log-mapping.ts';
import type { LogCurve, LogRun } from '../../logs/log-run.ts';
import type { Curve, Run } from '../../schema/live-tests/run.ts';
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
  const longestGapS = Math.max(0, ...run.gaps.map(({ lengthS }) => lengthS));
  return {
    ...said,
    ...above0('chargeAh', run.chargeAh),
    ...above0('energyWh', run.energyWh),
    ...above0('durationS', run.durationS),
    ...above0('currentA', run.meanCurrentA),
    ...above0('meanVoltageV', run.meanVoltageV),
    ...from0('startVoltageV', run.startVoltageV),
    // The last one while the pack was connected: 0 V afterwards says only that it was cut off.
    ...from0('endVoltageV', run.evidence.lastVoltageV ?? run.endVoltageV),
    log: {
      logId,
      firstLine: run.firstLine,
      lastLine: run.lastLine,
      rowCount,
      gapCount: run.gaps.length,
      ...(longestGapS > 0 && { longestGapS }),
      ...from0('counterChargeAh', run.counterChargeAh),
      mapping: { ...mapping },
      said: { ...said },
    },
    curve: storedCurve(curve, run.flow === 'in'),
    evidence: { ...run.evidence },
  };
}

function saidByLog({ runs, place, startedAtMs }: RunRead, run: LogRun): SaidByLog {
  const rest = restBefore(runs, place);
  // A rest that begins with the log may have been longer: only enough is enough.
  const told = rest.known === 'afterCharge' || (rest.known === 'atLeast' && rest.restS >= ENOUGH_REST_S);
  return {
    ...(startedAtMs !== null && { on: localDay(startedAtMs + run.startS * 1000, 0) }),
    end: run.end,
    ...(told && { restMin: rest.restS / 60 }),
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

function above0<K extends string>(key: K, value: number | null): { [P in K]?: number } {
  return value !== null && value > 0 && Number.isFinite(value) ? ({ [key]: value } as { [P in K]: number }) : {};
}

function from0<K extends string>(key: K, value: number | null): { [P in K]?: number } {
  return value !== null && value >= 0 && Number.isFinite(value) ? ({ [key]: value } as { [P in K]: number }) : {};
}
