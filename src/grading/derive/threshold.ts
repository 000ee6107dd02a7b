import type { CutOff } from '../../schema/live-tests/cut-off.ts';
import { above, below, exactly, type Figure } from './figure.ts';

/** One trial of a limit: the figure at which it acted, or that was reached without. */
export interface Trial {
  acted: boolean;
  at: Figure;
}

/** A thermal switch is no BMS: what it opened is a trial in which the BMS did not act. */
export function actedByBms({ acted, by }: Pick<CutOff, 'acted' | 'by'>): boolean {
  return acted && by !== 'thermalSwitch';
}

/**
 * Trials of one limit put together. `worse`: the side on which acting later is worse. A trial that ended before anything
 * acted only bounds the limit; it counts where none acted, or where it went on beyond where another acted.
 */
export function thresholdFigures(trials: readonly Trial[], worse: 'higher' | 'lower'): Figure[] {
  const acted = trials.filter((trial) => trial.acted).map(({ at }) => at);
  const passed = trials.filter((trial) => !trial.acted).map(({ at }) => beyond(at, worse));
  const latest = acted.map(nearEnd(worse));
  const contradicting = passed.filter((at) => acted.length === 0 || isBeyond(nearEnd(worse)(at), latest, worse));
  return [...acted, ...furthest(contradicting, worse)];
}

/** What is exactly known of a limit that did not act at `at`: it lies beyond. */
function beyond(at: Figure, worse: 'higher' | 'lower'): Figure {
  return worse === 'higher' ? above(at.low) : below(at.high);
}

function nearEnd(worse: 'higher' | 'lower'): (figure: Figure) => number {
  return worse === 'higher' ? ({ low }) => low : ({ high }) => high;
}

function isBeyond(reached: number, latest: readonly number[], worse: 'higher' | 'lower'): boolean {
  return worse === 'higher' ? latest.some((at) => reached > at) : latest.some((at) => reached < at);
}

/** Of several bounds the furthest says all. */
function furthest(bounds: readonly Figure[], worse: 'higher' | 'lower'): Figure[] {
  const end = nearEnd(worse);
  const order = [...bounds].sort((a, b) => (worse === 'higher' ? end(b) - end(a) : end(a) - end(b)));
  return order.slice(0, 1);
}

/** Volts of the worst cell: as read, or as far as the pack's own volts tell it. */
export function worstCell(
  { worstCellVoltageV, packVoltageV }: { worstCellVoltageV?: number | undefined; packVoltageV?: number | undefined },
  cellsInSeries: number | undefined,
  side: 'highest' | 'lowest',
): Figure | null {
  if (worstCellVoltageV !== undefined) return exactly(worstCellVoltageV);
  if (packVoltageV === undefined || cellsInSeries === undefined) return null;
  const meanV = packVoltageV / cellsInSeries;
  // The highest cell is at the mean or above it, the lowest at the mean or below.
  return side === 'highest' ? { low: meanV, high: Infinity } : { low: -Infinity, high: meanV };
}
