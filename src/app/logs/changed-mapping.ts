import { columnUse } from '../../logs/guess-columns.ts';
import type { CounterFlow, LogMapping, LogQuantity, OutIs, TimeFormat } from '../../logs/log-mapping.ts';
import { LOG_UNITS } from '../../logs/unit-words.ts';

/** The reader takes one column of each of these; of a counter, one of each flow. */
const ONLY_ONE: readonly LogQuantity[] = ['time', 'date', 'current', 'voltage', 'power', 'temperature', 'state'];
/** Formats that a column of plain numbers in this unit is written in. */
const FORMAT_OF_UNIT: Readonly<Record<string, TimeFormat>> = {
  s: 'seconds',
  ms: 'milliseconds',
  min: 'minutes',
  h: 'hours',
};

/** One column holds something else. Another that held the same gives it up. */
export function withQuantity(mapping: LogMapping, place: number, quantity: LogQuantity): LogMapping {
  const counted = quantity === 'charge' || quantity === 'energy' ? freeFlow(mapping, place, quantity) : null;
  const columns = mapping.columns.map((column, at) => {
    if (at === place) return { ...columnUse(quantity, unitsOf(quantity)[0] ?? ''), counts: counted };
    return ONLY_ONE.includes(quantity) && column.quantity === quantity ? columnUse('ignored', '') : column;
  });
  return { ...mapping, columns };
}

export function withUnit(mapping: LogMapping, place: number, unit: string): LogMapping {
  const columns = mapping.columns.map((column, at) =>
    at === place ? { ...columnUse(column.quantity, unit), counts: column.counts } : column,
  );
  const isTime = mapping.columns[place]?.quantity === 'time';
  return { ...mapping, columns, timeFormat: (isTime ? FORMAT_OF_UNIT[unit] : undefined) ?? mapping.timeFormat };
}

/** What a counter counts; another of the same quantity that counted it is not used any more. */
export function withCounts(mapping: LogMapping, place: number, counts: CounterFlow): LogMapping {
  const { quantity } = mapping.columns[place] ?? {};
  const columns = mapping.columns.map((column, at) => {
    if (at === place) return { ...column, counts, unitFrom: 'user' as const };
    return column.quantity === quantity && column.counts === counts ? columnUse('ignored', '') : column;
  });
  return { ...mapping, columns };
}

export function withTimeFormat(mapping: LogMapping, timeFormat: TimeFormat): LogMapping {
  const unit = Object.keys(FORMAT_OF_UNIT).find((one) => FORMAT_OF_UNIT[one] === timeFormat) ?? '';
  const columns = mapping.columns.map((column) => (column.quantity === 'time' ? columnUse('time', unit) : column));
  return { ...mapping, columns, timeFormat };
}

/** Whether time is a plain count, so that its unit may be wrong without anything else looking wrong. */
export function timeIsCounted({ timeFormat }: LogMapping): boolean {
  return Object.values(FORMAT_OF_UNIT).includes(timeFormat);
}

export function withSign(mapping: LogMapping, outIs: OutIs): LogMapping {
  return { ...mapping, outIs, signBecause: 'user' };
}

/** The other way about. Numbers without a sign are then taken as out of the pack where they are positive. */
export function turnedRound(mapping: LogMapping): LogMapping {
  return withSign(mapping, mapping.outIs === 'positive' ? 'negative' : 'positive');
}

/** Whether the sign of current has to be found again: what it was read from is another column now. */
export function signIsOpen(before: LogMapping, after: LogMapping): boolean {
  if (after.signBecause === 'user' && before.signBecause !== 'noCurrent') return false;
  const bearing = (mapping: LogMapping) =>
    mapping.columns
      .map(({ quantity, counts }, place) => ({ quantity, counts, place }))
      .filter(({ quantity }) => ['current', 'voltage', 'charge', 'state'].includes(quantity));
  return JSON.stringify(bearing(before)) !== JSON.stringify(bearing(after));
}

/** What a date may be written as; a date has that in place of a unit. */
export const DATE_FORMATS = ['iso', 'dayFirst', 'monthFirst'] as const satisfies readonly TimeFormat[];

/** Units a column of this quantity may be in, the usual one first; none where it has no unit. */
export function unitsOf(quantity: LogQuantity): string[] {
  if (quantity === 'date') return [...DATE_FORMATS];
  return LOG_UNITS.filter((one) => one.quantity === quantity).map(({ unit }) => unit);
}

function freeFlow(mapping: LogMapping, place: number, quantity: LogQuantity): CounterFlow {
  const taken = mapping.columns.filter((column, at) => at !== place && column.quantity === quantity);
  return (['net', 'out', 'in'] as const).find((flow) => !taken.some(({ counts }) => counts === flow)) ?? 'net';
}
