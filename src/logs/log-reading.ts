import type { OutIs, SignBecause } from './log-mapping.ts';

/** A log as numbers, row by row in file order. Nothing is left out without being counted. */
export interface LogReading {
  columns: LogColumns;
  /** Parts in which time does not fall; a lasting fall (files joined) begins another. */
  stretches: LogStretch[];
  /** Clock time of the first row where the log has dates, taken as UTC where no zone is printed. */
  startedAtMs: number | null;
  sign: { outIs: OutIs; because: SignBecause };
  /** Why there is no charge or no energy; `null` where there is. */
  noCharge: 'noCurrentColumn' | null;
  noEnergy: 'noCurrentColumn' | 'noVoltageColumn' | null;
  counts: LogCounts;
  /** The first `REJECTED_KEPT`; `counts.rejected` counts all. */
  rejected: RejectedRow[];
  refused?: ReadRefusal;
}

/** Arrays of one length; `null` where the log has no such column. Not a number where a single value is absent. */
export interface LogColumns {
  /** As printed where the log counts from its start, from the first row where it has dates. */
  timeS: Float64Array;
  /** Positive is out of the pack. */
  currentA: Float64Array | null;
  voltageV: Float64Array | null;
  temperatureDegC: Float64Array | null;
  /** The log's own counters, made to run on where they restart. */
  counterOutAh: Float64Array | null;
  counterInAh: Float64Array | null;
  counterNetAh: Float64Array | null;
  /** Changes exactly where the step, cycle or state changes; the number itself means nothing. */
  step: Uint32Array | null;
  line: Uint32Array;
}

export interface LogStretch {
  firstIndex: number;
  lastIndex: number;
}

/** rowsRead = rows kept + merged + rejected. */
export interface LogCounts {
  rowsRead: number;
  /** Rows averaged into the one before, which has the same stamp. */
  merged: number;
  rejected: number;
  /** Empty cells of current or voltage, filled on the straight line between the nearest readings. */
  filled: number;
  /** Temperatures no sensor here can show (a sensor not fitted); the rows stay. */
  temperaturesLeftOut: number;
  /** Times a clock without a date passed midnight. */
  midnights: number;
}

export interface RejectedRow {
  line: number;
  reason: RejectReason;
}

/** Our choice: enough to look through by hand. */
export const REJECTED_KEPT = 1000;

export const REJECT_REASONS = [
  'notARow',
  'tooFewCells',
  'badTime',
  'notANumber',
  'emptyCell',
  'sentinel',
  'timeFellForOneRow',
  'timeJumpedForOneRow',
] as const;
export type RejectReason = (typeof REJECT_REASONS)[number];

export const READ_REFUSALS = ['empty', 'tooLarge', 'noNumbers', 'noTime', 'noVoltageOrCurrent'] as const;
export type ReadRefusal = (typeof READ_REFUSALS)[number];
