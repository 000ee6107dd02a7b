import type { RunCurve } from '../run-plot.ts';
import { requireFinite, requireSeries } from './require-finite.ts';
import { type TimeUnit, timeUnitFor } from './time-unit.ts';

/** A run with the places of its points along the axis below, in the axis' unit. */
export interface PlacedRun {
  run: RunCurve;
  xs: readonly number[];
}

export interface PlacedRuns {
  placed: PlacedRun[];
  /** Those without what the axes ask for. */
  left: RunCurve[];
  unit: TimeUnit;
}

/** Along time each run begins at 0; along charge it stands where its counter does. */
export function placedRuns(runs: readonly RunCurve[], by: 'time' | 'charge', current: boolean): PlacedRuns {
  for (const run of runs) requireRun(run);
  const canStand = (run: RunCurve): boolean =>
    run.timeS.length > 0 &&
    (by === 'time' || run.chargeAh !== null) &&
    (run.voltageV !== null || (current && run.currentA !== null));
  const standing = runs.filter(canStand);
  const unit = timeUnitFor(Math.max(0, ...standing.map(spanS)));
  return {
    unit,
    left: runs.filter((run) => !canStand(run)),
    placed: standing.map((run) => ({
      run,
      xs: by === 'charge' ? (run.chargeAh ?? []) : run.timeS.map((timeS) => (timeS - startS(run)) / unit.inS),
    })),
  };
}

function requireRun({ label, timeS, voltageV, currentA, chargeAh, cutOffVoltageV }: RunCurve): void {
  const name = `runPlot: ${label}`;
  requireFinite(`${name} timeS`, timeS);
  if (voltageV !== null) requireSeries(`${name} voltageV`, voltageV, timeS.length);
  if (currentA !== null) requireSeries(`${name} currentA`, currentA, timeS.length);
  if (chargeAh !== null) requireSeries(`${name} chargeAh`, chargeAh, timeS.length);
  if (cutOffVoltageV !== null) requireFinite(`${name} cutOffVoltageV`, [cutOffVoltageV]);
}

function startS(run: RunCurve): number {
  return run.timeS[0] ?? 0;
}

function spanS(run: RunCurve): number {
  return (run.timeS.at(-1) ?? 0) - startS(run);
}
