import { fillCells } from './fill-cells.ts';
import type { LogMapping } from './log-mapping.ts';
import type { LogReading, LogStretch, ReadRefusal } from './log-reading.ts';
import { type LogRows, SLOT } from './log-rows.ts';
import { oneByteText } from './log-text.ts';
import { mergeRows } from './merge-rows.ts';
import { orderRows } from './order-rows.ts';
import { orientCurrent } from './orient-current.ts';
import { restLevel } from './rest-level.ts';
import { RowReader } from './row-reader.ts';
import { runOnCounter } from './run-on-counters.ts';
import { DATED_TIMES } from './time-cell.ts';

/** Our choice: 4 million rows or so; more would not fit a phone beside the app. */
const MOST_BYTES = 256 * 1024 * 1024;
/** 1970-01-01 as a serial day: 25 569 days after 1899-12-30 (closed form). */
const SERIAL_DAYS_BEFORE_1970 = 25_569;
/** About 5 ms on a desktop and 20 ms on a phone. */
const ROWS_AT_ONCE = 12_000;

/**
 * Reads a log as the mapping says. Pauses now and then with the share done, so that the caller can show it, let other
 * work in, or stop. Rows are put in order, empty cells bridged, equal stamps averaged, the current turned; each of
 * these counts what it did.
 */
export function* readLog(bytes: Uint8Array, mapping: LogMapping): Generator<{ doneFrac: number }, LogReading> {
  const refused = refusal(bytes, mapping);
  if (refused !== null) return refusedReading(refused, mapping);
  const { layout, columns, timeFormat, outIs } = mapping;
  const text = oneByteText(bytes.subarray(layout.byteOrderMarkBytes), layout.encoding);
  const reader = new RowReader(text, mapping);
  while (reader.read(ROWS_AT_ONCE)) yield { doneFrac: (0.9 * reader.position) / text.length };
  const { rows } = reader;
  yield { doneFrac: 0.9 };
  if (rows.count === 0) return { ...refusedReading('noNumbers', mapping), ...told(rows) };

  const timeS = rows.series[SLOT.time] as Float64Array;
  const clockOnly = timeFormat === 'clock' || timeFormat === 'clockHoursMinutes';
  const dated = columns.some(({ quantity }) => quantity === 'date');
  const firstMs =
    dated || DATED_TIMES.includes(timeFormat) ? fromFirstRow(timeS, rows.count, reader.baseDays ?? 0) : null;
  for (const slot of [SLOT.counterOut, SLOT.counterIn, SLOT.counterNet]) {
    const counterAh = rows.series[slot];
    if (counterAh) runOnCounter(counterAh, rows.count, slot === SLOT.counterNet);
  }
  const ordered = orderRows(rows, clockOnly && !dated);
  yield { doneFrac: 0.93 };
  const whole = fillCells(rows, ordered.stretches);
  orientCurrent(rows, whole.stretches, outIs);
  yield { doneFrac: 0.96 };
  const merge = mergeRows(rows, whole.stretches, restA(rows));
  if (rows.count === 0) return { ...refusedReading('noNumbers', mapping), ...told(rows) };
  return {
    ...readingOf(rows, merge.stretches, mapping),
    startedAtMs: timeFormat === 'serialDays' ? fromSerial(firstMs) : firstMs,
    ...told(rows, { merged: merge.merged, filled: whole.filled, midnights: ordered.midnights }),
  };
}

/** Why a log cannot be read at all under this mapping; `null` if it can be tried. */
function refusal(bytes: Uint8Array, { columns, layout }: LogMapping): ReadRefusal | null {
  if (bytes.length <= layout.byteOrderMarkBytes) return 'empty';
  if (bytes.length > MOST_BYTES) return 'tooLarge';
  if (columns.length === 0) return 'noNumbers';
  const has = (quantity: string) => columns.some((column) => column.quantity === quantity);
  if (!has('voltage') && !has('current')) return 'noVoltageOrCurrent';
  return has('time') ? null : 'noTime';
}

/** Seconds from the first row on, in place; the clock time of that row. */
function fromFirstRow(timeS: Float64Array, count: number, baseDays: number): number {
  const firstS = timeS[0] as number;
  for (let at = 0; at < count; at++) timeS[at] = (timeS[at] as number) - firstS;
  return Math.round((baseDays * 86_400 + firstS) * 1000);
}

/** Spreadsheets count days from 1899-12-30; a small count is time run, not a date. */
function fromSerial(firstMs: number | null): number | null {
  const ms = (firstMs ?? 0) - SERIAL_DAYS_BEFORE_1970 * 86_400_000;
  return ms > 0 ? ms : null;
}

function restA(rows: LogRows): number {
  const [timeS, currentA] = [rows.series[SLOT.time], rows.series[SLOT.current]];
  if (!timeS || !currentA) return 0;
  return restLevel(timeS.subarray(0, rows.count), currentA.subarray(0, rows.count)).loadedA;
}

function told(rows: LogRows, done: { merged: number; filled: number; midnights: number } = NOTHING_DONE) {
  return {
    counts: {
      rowsRead: rows.rowsRead,
      rejected: rows.rejectedCount,
      temperaturesLeftOut: rows.temperaturesLeftOut,
      ...done,
    },
    rejected: rows.rejected.toSorted((one, other) => one.line - other.line),
  };
}

const NOTHING_DONE = { merged: 0, filled: 0, midnights: 0 };

function readingOf(rows: LogRows, stretches: LogStretch[], mapping: LogMapping) {
  const cut = (slot: number) => rows.series[slot]?.subarray(0, rows.count) ?? null;
  const columns = {
    timeS: cut(SLOT.time) ?? new Float64Array(0),
    currentA: cut(SLOT.current),
    voltageV: cut(SLOT.voltage),
    temperatureDegC: cut(SLOT.temperature),
    counterOutAh: cut(SLOT.counterOut),
    counterInAh: cut(SLOT.counterIn),
    counterNetAh: cut(SLOT.counterNet),
    step: rows.step?.subarray(0, rows.count) ?? null,
    line: rows.line.subarray(0, rows.count),
  };
  const noCurrent = columns.currentA === null ? ('noCurrentColumn' as const) : null;
  return {
    columns,
    stretches,
    sign: { outIs: mapping.outIs, because: mapping.signBecause },
    noCharge: noCurrent,
    noEnergy: noCurrent ?? (columns.voltageV === null ? ('noVoltageColumn' as const) : null),
  };
}

function refusedReading(refused: ReadRefusal, mapping: LogMapping): LogReading {
  return {
    columns: {
      timeS: new Float64Array(0),
      currentA: null,
      voltageV: null,
      temperatureDegC: null,
      counterOutAh: null,
      counterInAh: null,
      counterNetAh: null,
      step: null,
      line: new Uint32Array(0),
    },
    stretches: [],
    startedAtMs: null,
    sign: { outIs: mapping.outIs, because: mapping.signBecause },
    noCharge: 'noCurrentColumn',
    noEnergy: 'noCurrentColumn',
    counts: { rowsRead: 0, rejected: 0, temperaturesLeftOut: 0, ...NOTHING_DONE },
    rejected: [],
    refused,
  };
}
