import type { LogStretch } from './log-reading.ts';
import { type LogRows, SLOT } from './log-rows.ts';

/** Our choice: up to so many rows below both neighbours are the logger's fault; more are another log joined on. */
const STRAY_ROWS = 3;
/** A clock without a date that goes from the last hour of a day to the first has passed midnight. Our choice. */
const LAST_HOUR_S = 23 * 3600;
const DAY_S = 86_400;

/**
 * Puts the rows in stretches in which time does not fall, without sorting: stray rows are rejected, a clock without a
 * date is carried over midnight, and a lasting fall of time begins another stretch. Rows kept are moved together.
 */
export function orderRows(rows: LogRows, clockOnly: boolean): { stretches: LogStretch[]; midnights: number } {
  const timeS = rows.series[SLOT.time];
  if (!timeS || rows.count === 0) return { stretches: [], midnights: 0 };
  const midnights = clockOnly ? carryOverMidnight(timeS, rows.count) : 0;
  const starts: number[] = [0];
  let kept = 1;
  for (let at = 1; at < rows.count; at++) {
    const now = timeS[at] as number;
    const before = timeS[kept - 1] as number;
    if (now < before) {
      const back = rowsUntil(timeS, { at, count: rows.count, reachS: before });
      if (back > 0) {
        for (let stray = at; stray < at + back; stray++) rows.reject(rows.line[stray] as number, 'timeFellForOneRow');
        at += back - 1;
        continue;
      }
      if (isJump(timeS, { kept, at, count: rows.count, from: starts.at(-1) ?? 0 })) {
        kept--;
        rows.reject(rows.line[kept] as number, 'timeJumpedForOneRow');
      } else starts.push(kept);
    }
    moveRow(rows, at, kept);
    kept++;
  }
  rows.count = kept;
  return {
    stretches: starts.map((firstIndex, place) => ({ firstIndex, lastIndex: (starts[place + 1] ?? kept) - 1 })),
    midnights,
  };
}

/** How many rows from `at` on are stray: time is back where it was right after them. 0 for a lasting fall. */
function rowsUntil(timeS: Float64Array, { at, count, reachS }: { at: number; count: number; reachS: number }): number {
  for (let rows = 1; rows <= STRAY_ROWS; rows++) {
    if (at + rows >= count) return rows === 1 ? 1 : 0;
    if ((timeS[at + rows] as number) >= reachS) return rows;
  }
  return 0;
}

/** Whether the row kept last stands alone too high: without it, time goes on rising. */
function isJump(
  timeS: Float64Array,
  { kept, at, count, from }: { kept: number; at: number; count: number; from: number },
): boolean {
  if (kept - 2 < from) return false;
  const earlier = timeS[kept - 2] as number;
  const now = timeS[at] as number;
  return now >= earlier && (at + 1 >= count || (timeS[at + 1] as number) >= now);
}

function carryOverMidnight(timeS: Float64Array, count: number): number {
  let midnights = 0;
  let before = timeS[0] as number;
  for (let at = 1; at < count; at++) {
    const now = timeS[at] as number;
    if (before >= LAST_HOUR_S && before < DAY_S && now >= 0 && now < DAY_S - LAST_HOUR_S) midnights++;
    before = now;
    timeS[at] = now + midnights * DAY_S;
  }
  return midnights;
}

/** Copies a row down within all arrays. */
export function moveRow(rows: LogRows, from: number, to: number): void {
  if (from === to) return;
  for (const column of rows.series) if (column) column[to] = column[from] as number;
  rows.line[to] = rows.line[from] as number;
  if (rows.step) rows.step[to] = rows.step[from] as number;
  if (rows.state) rows.state[to] = rows.state[from] as number;
}
