import { cellKind, cellNumber } from './cell-kind.ts';
import { type NamedColumn, namedColumn } from './column-words.ts';
import { guessTimeFormat } from './guess-time-format.ts';
import type { LogLayout } from './log-layout.ts';
import type { ColumnUse, CounterFlow, LogQuantity, UnitFrom } from './log-mapping.ts';
import { STATE, stateOf } from './state-words.ts';
import { LOG_UNITS, type LogUnit, unitOf } from './unit-words.ts';

/** Names of millivolts and milliamperes are often just volts and amperes. No pack on a bench has 1000 V: our choice. */
const TOO_MANY_V = 1000;
const TOO_MANY_A = 2000;

/** Our choice: a column of numbers may be interrupted by text for most of a log; a text column holds few numbers. */
const LEAST_NUMBERS_FRAC = 0.25;

interface Column {
  named: NamedColumn | null;
  cells: string[];
  numbers: number[];
  kind: 'number' | 'time' | 'text' | 'empty';
}

/** What each column holds, by its name, its units, and its cells where these say nothing or something else. */
export function guessColumns(layout: LogLayout, sample: readonly string[][]): ColumnUse[] {
  const columns = layout.columnNames.map((name, place) => columnOf(layout, { name, place, sample }));
  const uses: ColumnUse[] = columns.map(() => use('ignored', null, 'assumed'));
  const taken = new Set<number>();
  const take = (place: number, quantity: LogQuantity, named: NamedColumn | null) => {
    const numbers = columns[place]?.numbers ?? [];
    taken.add(place);
    uses[place] = { ...fittingUnit(quantity, named, numbers), counts: named?.counts ?? null };
  };

  const states = columns.findIndex(isState);
  if (states >= 0) take(states, 'state', null);
  for (const [place, { named, kind }] of columns.entries()) {
    if (named?.quantity === 'step' && named.rank > 0 && kind !== 'empty' && !taken.has(place))
      take(place, 'step', null);
  }
  const time = timePlace(
    columns,
    layout.columnNames.every((name) => name === ''),
  );
  if (time !== null) {
    take(time, 'time', columns[time]?.named ?? null);
    const date = columns.findIndex(
      ({ kind, cells }, place) => place !== time && kind === 'time' && cells.every(isDate),
    );
    if (date >= 0 && !columns[time]?.cells.some(isDate) && columns[time]?.kind === 'time')
      uses[date] = { ...use('date', null, 'numbers'), unit: dateFormat(layout, columns[date]?.cells ?? []) };
  }
  for (const quantity of ['voltage', 'current', 'power', 'temperature'] as const) {
    const place = bestNamed(columns, ({ named }) => named?.quantity === quantity, taken);
    if (place !== null) take(place, quantity, columns[place]?.named ?? null);
  }
  for (const quantity of ['charge', 'energy'] as const) {
    for (const counts of ['out', 'in', 'net'] as const) {
      const place = bestNamed(columns, ({ named }) => named?.quantity === quantity && named.counts === counts, taken);
      if (place !== null) take(place, quantity, columns[place]?.named ?? null);
    }
  }
  if (!uses.some(({ quantity }) => quantity === 'voltage' || quantity === 'current')) {
    for (const [place, quantity] of byNumbers(columns, taken)) take(place, quantity, null);
  }
  return uses;
}

/** A column's use when a person says what it is; an unknown unit gives the usual one. Of a date the unit is its format. */
export function columnUse(quantity: LogQuantity, unit: string, counts: CounterFlow | null = null): ColumnUse {
  if (quantity === 'date') return { ...use('date', null, 'user'), unit };
  const known = LOG_UNITS.find((one) => one.quantity === quantity && one.unit === unit) ?? usualUnit(quantity);
  return { ...use(quantity, known, 'user'), counts };
}

function columnOf(
  layout: LogLayout,
  { name, place, sample }: { name: string; place: number; sample: readonly string[][] },
): Column {
  const cells = sample.map((row) => row[place] ?? '').filter((cell) => cellKind(cell, layout.decimalMark) !== 'empty');
  const kinds = cells.map((cell) => cellKind(cell, layout.decimalMark));
  const share = (kind: string) => kinds.filter((one) => one === kind).length / Math.max(1, cells.length);
  const kind =
    cells.length === 0
      ? 'empty'
      : share('number') >= LEAST_NUMBERS_FRAC
        ? 'number'
        : share('time') > 0.5
          ? 'time'
          : 'text';
  return {
    named: namedColumn(name, layout.columnUnits[place] ?? ''),
    cells,
    numbers: cells.map((cell) => cellNumber(cell, layout.decimalMark)).filter((number) => !Number.isNaN(number)),
    kind,
  };
}

/** Without any names the first rising column is time; with names that say nothing of time, a person must say which. */
function timePlace(columns: readonly Column[], nameless: boolean): number | null {
  const named = bestNamed(columns, ({ named, kind }) => named?.quantity === 'time' && kind !== 'text', new Set());
  if (named !== null) return named;
  const dated = columns.findIndex(({ kind }) => kind === 'time');
  if (dated >= 0) return dated;
  const rising = columns.findIndex(({ kind, numbers }) => kind === 'number' && rises(numbers));
  return nameless && rising >= 0 ? rising : null;
}

/** The surest column, the first of equals. */
function bestNamed(
  columns: readonly Column[],
  fits: (column: Column) => boolean,
  taken: ReadonlySet<number>,
): number | null {
  let best: number | null = null;
  let bestRank = 0;
  for (const [place, column] of columns.entries()) {
    if (taken.has(place) || column.kind === 'empty' || !fits(column)) continue;
    if (column.named?.quantity !== 'time' && column.kind !== 'number') continue;
    const rank = column.named?.rank ?? 0;
    if (rank > bestRank) [best, bestRank] = [place, rank];
  }
  return best;
}

/** No name helps: a text column that names the quantity of a lone number, or the look of the numbers. */
function byNumbers(columns: readonly Column[], taken: ReadonlySet<number>): [number, LogQuantity][] {
  const free = [...columns.entries()].filter(([place, { kind }]) => kind === 'number' && !taken.has(place));
  const told = columns
    .filter(({ kind, cells }) => kind === 'text' && new Set(cells).size === 1)
    .map(({ cells }) => cells[0]);
  const [lone] = free;
  if (free.length === 1 && lone !== undefined) {
    if (told.some((text) => /volt|spannung|tension/i.test(text ?? ''))) return [[lone[0], 'voltage']];
    if (told.some((text) => /current|amp|strom/i.test(text ?? ''))) return [[lone[0], 'current']];
  }
  const unnamed = free.filter(([, { named }]) => named === null);
  // A battery's voltage is never 0 nor negative for long and stays within a factor of two.
  const steady = unnamed.filter(([, { numbers }]) => Math.min(...numbers) > 0.5 * Math.max(...numbers));
  const voltage = steady.toSorted(([, one], [, other]) => new Set(other.numbers).size - new Set(one.numbers).size)[0];
  if (voltage === undefined) return [];
  const current = unnamed.find(([place]) => place !== voltage[0]);
  return current === undefined
    ? [[voltage[0], 'voltage']]
    : [
        [voltage[0], 'voltage'],
        [current[0], 'current'],
      ];
}

function isState({ kind, cells, named }: Column): boolean {
  if (kind !== 'text') return false;
  const known = cells.filter((cell) => stateOf(cell) !== STATE.none).length;
  const moves = cells.some((cell) => stateOf(cell) === STATE.out || stateOf(cell) === STATE.in);
  const shortOrNamed = named?.quantity === 'state' || named?.quantity === 'step' || new Set(cells).size <= 12;
  return moves && shortOrNamed && known >= 0.8 * cells.length;
}

function fittingUnit(quantity: LogQuantity, named: NamedColumn | null, numbers: readonly number[]): ColumnUse {
  const unit = named?.unit ?? usualUnit(quantity);
  const unitFrom = named?.unitFrom ?? 'assumed';
  const sizes = numbers.map(Math.abs).toSorted((one, other) => one - other);
  const usual = sizes[Math.floor(sizes.length * 0.75)] ?? 0;
  if (quantity === 'voltage' && unit?.unit === 'V' && usual >= TOO_MANY_V)
    return use(quantity, unitOf('mV'), 'numbers');
  if (quantity === 'current' && unit?.unit === 'A' && usual >= TOO_MANY_A)
    return use(quantity, unitOf('mA'), 'numbers');
  return use(quantity, unit, unitFrom);
}

function use(quantity: LogQuantity, unit: LogUnit | null, unitFrom: UnitFrom): ColumnUse {
  const offset = unit?.offset === undefined ? {} : { offset: unit.offset };
  return { quantity, unit: unit?.unit ?? '', scale: unit?.scale ?? 1, ...offset, unitFrom, counts: null };
}

function usualUnit(quantity: LogQuantity): LogUnit | null {
  return LOG_UNITS.find((one) => one.quantity === quantity) ?? null;
}

function dateFormat({ decimalMark }: LogLayout, cells: readonly string[]): string {
  return guessTimeFormat({ cells, decimalMark, unit: null, withDate: false });
}

function isDate(cell: string): boolean {
  return /^\d{1,4}[-/.](\d{1,2}|[a-z]{3,9})[-/.]\d{1,4}/i.test(cell.trim());
}

/** Nine of ten steps up or level, and up on the whole. */
function rises(numbers: readonly number[]): boolean {
  const steps = numbers.slice(1).map((number, place) => number - (numbers[place] ?? 0));
  const [first = 0, last = 0] = [numbers[0], numbers.at(-1)];
  return steps.length > 0 && last > first && steps.filter((step) => step >= 0).length >= 0.9 * steps.length;
}
