import type { LogLayout } from './log-layout.ts';

/** Everything needed to read a log the same way again. Plain JSON; a person may change any of it and read again. */
export interface LogMapping {
  layout: LogLayout;
  /** One for each column, in order. */
  columns: ColumnUse[];
  timeFormat: TimeFormat;
  /** Which sign of current means out of the pack; `unsigned` where the numbers are magnitudes. */
  outIs: OutIs;
  signBecause: SignBecause;
}

export interface ColumnUse {
  quantity: LogQuantity;
  /** As understood (`mA`, `Ah`, `°C` …); of a `date` its format (`iso`, `dayFirst`, `monthFirst`); else empty. */
  unit: string;
  /** The number in the file times this is in A, V, W, Ah, Wh, °C. */
  scale: number;
  /** Added after that: kelvin and Fahrenheit need it. */
  offset?: number;
  unitFrom: UnitFrom;
  /** Of a charge or energy counter: what it counts. */
  counts: CounterFlow | null;
}

/** `date` is a date beside a clock time in a column of its own; `step` is whatever numbers the parts of a test. */
export const LOG_QUANTITIES = [
  'time',
  'date',
  'current',
  'voltage',
  'power',
  'charge',
  'energy',
  'temperature',
  'step',
  'state',
  'ignored',
] as const;
export type LogQuantity = (typeof LOG_QUANTITIES)[number];

/** `numbers`: the name contradicts the numbers, and the numbers were believed. */
export type UnitFrom = 'name' | 'unitsRow' | 'numbers' | 'assumed' | 'user';

export type CounterFlow = 'out' | 'in' | 'net';

/** `clock` is h:mm:ss, past 24 h too, days before it or not; two parts are minutes and seconds. */
export const TIME_FORMATS = [
  'seconds',
  'milliseconds',
  'minutes',
  'hours',
  'clock',
  'clockHoursMinutes',
  'iso',
  'dayFirst',
  'monthFirst',
  'serialDays',
  'unixSeconds',
  'unixMilliseconds',
] as const;
export type TimeFormat = (typeof TIME_FORMATS)[number];

export const OUT_IS = ['positive', 'negative', 'unsigned'] as const;
export type OutIs = (typeof OUT_IS)[number];

/**
 * Why the sign is taken as it is, surest first: letters or words of state; counters that grow with it; voltage that
 * falls when it rises; voltage that falls while it lasts; its own name; voltage that both rises and falls under one
 * sign. `cannotTell` is a guess, and the screen says so.
 */
export const SIGN_BECAUSE = [
  'user',
  'stateColumn',
  'counters',
  'currentSteps',
  'voltageTrend',
  'columnName',
  'risesAndFalls',
  'noCurrent',
  'cannotTell',
] as const;
export type SignBecause = (typeof SIGN_BECAUSE)[number];
