import { cellNumber } from './cell-kind.ts';
import type { DecimalMark } from './log-layout.ts';
import type { TimeFormat } from './log-mapping.ts';
import { timeCell } from './time-cell.ts';
import type { LogUnit } from './unit-words.ts';

/** Days since 1899-12-30, as spreadsheets count: 2000-01-01 is 36526, 2100-01-01 is 73051 (closed form). */
const SERIAL_DAYS = { from: 36_526, to: 73_051 };
/** 2000-01-01 to 2100-01-01 in seconds since 1970. */
const UNIX_S = { from: 946_684_800, to: 4_102_444_800 };

export interface TimeSamples {
  cells: readonly string[];
  decimalMark: DecimalMark;
  unit: LogUnit | null;
  withDate: boolean;
}

/** What the cells of a time column are: dates, clock times, or numbers in a unit. */
export function guessTimeFormat({ cells, decimalMark, unit, withDate }: TimeSamples): TimeFormat {
  const numbers = cells.map((cell) => cellNumber(cell, decimalMark)).filter((number) => !Number.isNaN(number));
  if (numbers.length > cells.length / 2) return numberFormat(numbers, unit);
  if (most(cells, 'iso')) return 'iso';
  if (most(cells, 'dayFirst') || most(cells, 'monthFirst')) return dayOrMonthFirst(cells);
  const twoParts = cells.every((cell) => /^\d+:\d+$/.test(cell.trim()));
  return twoParts && withDate ? 'clockHoursMinutes' : 'clock';
}

function numberFormat(numbers: readonly number[], unit: LogUnit | null): TimeFormat {
  const first = numbers[0] ?? 0;
  const within = ({ from, to }: { from: number; to: number }, value: number) => value >= from && value < to;
  if (within(UNIX_S, first)) return 'unixSeconds';
  if (within(UNIX_S, first / 1000)) return 'unixMilliseconds';
  const units: Record<string, TimeFormat> = { ms: 'milliseconds', min: 'minutes', h: 'hours', d: 'serialDays' };
  const named = unit === null ? undefined : units[unit.unit];
  if (named !== undefined) return named;
  const fractions = numbers.some((number) => !Number.isInteger(number));
  const within2Weeks = Math.abs((numbers.at(-1) ?? 0) - first) < 14;
  return unit === null && within(SERIAL_DAYS, first) && fractions && within2Weeks ? 'serialDays' : 'seconds';
}

/** Both may read: then the one under which the log is shorter, and day first where that does not tell either. */
function dayOrMonthFirst(cells: readonly string[]): TimeFormat {
  const [dayFirst, monthFirst] = [spanDays(cells, 'dayFirst'), spanDays(cells, 'monthFirst')];
  if (monthFirst !== dayFirst) return monthFirst < dayFirst ? 'monthFirst' : 'dayFirst';
  // Half-day clocks and strokes go together with the month in front: common practice, no source.
  return cells.some((cell) => /\/.*[ap]\.?m/i.test(cell)) ? 'monthFirst' : 'dayFirst';
}

function spanDays(cells: readonly string[], format: TimeFormat): number {
  const days = cells.map((cell) => timeCell(cell.trim(), format)?.days);
  const read = days.filter((day) => day !== undefined);
  if (read.length < cells.length / 2 || read.length < Math.max(...otherCounts(cells))) return Number.POSITIVE_INFINITY;
  return Math.max(...read) - Math.min(...read);
}

function otherCounts(cells: readonly string[]): number[] {
  return (['dayFirst', 'monthFirst'] as const).map(
    (format) => cells.filter((cell) => timeCell(cell.trim(), format) !== null).length,
  );
}

function most(cells: readonly string[], format: TimeFormat): boolean {
  const read = cells.filter((cell) => timeCell(cell.trim(), format) !== null).length;
  return read > 0 && read >= 0.5 * cells.length;
}
