import type { LogRun } from '../../logs/log-run.ts';

/** Our choice: less than a tenth of the largest charge of the log is a pulse or a try, seldom a capacity run. */
const TICKED_FROM_FRAC = 0.1;
/** Nothing else happened between the end of a charge and the rest that follows it, but for rounding of the stamps. */
const SAME_MOMENT_S = 1;

/**
 * A charge is not kept: a stored run counts as delivered. A hold out of the pack is a run of its own; one into it is part
 * of a charge.
 */
export function canBeKept({ kind, flow }: Pick<LogRun, 'kind' | 'flow'>): boolean {
  return kind === 'voltageOnly' || flow === 'out';
}

/** What is offered as ticked: discharges at a steady current that are not pulses. */
export function tickedAtFirst(runs: readonly LogRun[]): number[] {
  const mostAh = Math.max(0, ...runs.filter(({ kind }) => kind === 'discharge').map(({ chargeAh }) => chargeAh ?? 0));
  return [...runs.entries()]
    .filter(([, run]) => run.kind === 'discharge' && (run.chargeAh ?? 0) >= TICKED_FROM_FRAC * mostAh)
    .map(([place]) => place);
}

/** How long the pack rested before a run, and whether the log shows what came before that rest. */
export type RestBefore =
  | { known: 'no' }
  | { known: 'atLeast'; restS: number }
  | { known: 'afterCharge'; restS: number; charge: LogRun }
  | { known: 'afterOther'; restS: number };

export function restBefore(runs: readonly LogRun[], place: number): RestBefore {
  const run = runs[place];
  const restS = run?.restBeforeS ?? null;
  if (run === undefined || restS === null) return { known: 'no' };
  const before = runs[place - 1];
  if (before === undefined || Math.abs(run.startS - restS - before.endS) > SAME_MOMENT_S) {
    return { known: 'atLeast', restS };
  }
  return before.flow === 'in' ? { known: 'afterCharge', restS, charge: before } : { known: 'afterOther', restS };
}
