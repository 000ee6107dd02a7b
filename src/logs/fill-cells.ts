import type { LogStretch } from './log-reading.ts';
import { type LogRows, SLOT } from './log-rows.ts';
import { moveRow } from './order-rows.ts';

/** Our choice: a channel read on every third or tenth row is bridged, a longer silence is not. */
const MOST_ROWS = 10;

/**
 * Fills empty cells of current and voltage on the straight line between the nearest readings of the same stretch, and
 * rejects the rows where there is none within reach. How many cells were filled.
 */
export function fillCells(rows: LogRows, stretches: LogStretch[]): { filled: number; stretches: LogStretch[] } {
  const timeS = rows.series[SLOT.time];
  const wanted = [rows.series[SLOT.current], rows.series[SLOT.voltage]].filter((column) => column != null);
  if (!timeS || !wanted.some((column) => column.subarray(0, rows.count).some(Number.isNaN))) {
    return { filled: 0, stretches };
  }
  let filled = 0;
  for (const stretch of stretches) for (const column of wanted) filled += fillColumn(timeS, column, stretch);
  return { filled, stretches: rejectEmpty(rows, stretches, wanted) };
}

function fillColumn(timeS: Float64Array, column: Float64Array, { firstIndex, lastIndex }: LogStretch): number {
  let filled = 0;
  let before = -1;
  for (let at = firstIndex; at <= lastIndex; at++) {
    if (Number.isNaN(column[at])) continue;
    if (before >= 0 && at - before > 1 && at - before <= MOST_ROWS) {
      const [fromS, fromValue] = [timeS[before] as number, column[before] as number];
      const spanS = (timeS[at] as number) - fromS;
      const rise = (column[at] as number) - fromValue;
      for (let empty = before + 1; empty < at; empty++) {
        column[empty] = fromValue + (spanS > 0 ? (((timeS[empty] as number) - fromS) / spanS) * rise : 0);
        filled++;
      }
    }
    before = at;
  }
  return filled;
}

function rejectEmpty(rows: LogRows, stretches: LogStretch[], wanted: readonly Float64Array[]): LogStretch[] {
  const left: LogStretch[] = [];
  let kept = 0;
  for (const { firstIndex, lastIndex } of stretches) {
    const start = kept;
    for (let at = firstIndex; at <= lastIndex; at++) {
      if (wanted.some((column) => Number.isNaN(column[at]))) rows.reject(rows.line[at] as number, 'emptyCell');
      else moveRow(rows, at, kept++);
    }
    if (kept > start) left.push({ firstIndex: start, lastIndex: kept - 1 });
  }
  rows.count = kept;
  return left;
}
