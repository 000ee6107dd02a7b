import type { LogStretch } from './log-reading.ts';
import { type LogRows, SLOT } from './log-rows.ts';
import { moveRow } from './order-rows.ts';

/** Currents of one regime differ by less than a tenth: our choice; a switch of load or rate differs by more. */
const SAME_CURRENT_FRAC = 0.1;
const AVERAGED = [SLOT.current, SLOT.voltage, SLOT.temperature];

/**
 * Averages rows with equal stamps into the first of them, only where step and state are the same and the current is of
 * the same regime: the two rows of a change of step belong to different runs. How many rows were merged away.
 */
export function mergeRows(
  rows: LogRows,
  stretches: LogStretch[],
  restA: number,
): { merged: number; stretches: LogStretch[] } {
  const timeS = rows.series[SLOT.time];
  if (!timeS) return { merged: 0, stretches };
  const before = rows.count;
  let kept = 0;
  let weight = 1;
  const moved = stretches.map(({ firstIndex, lastIndex }) => {
    const start = kept;
    for (let at = firstIndex; at <= lastIndex; at++) {
      if (kept > start && timeS[at] === timeS[kept - 1] && sameRegime(rows, kept - 1, at, restA)) {
        weight++;
        averageInto(rows, kept - 1, at, weight);
      } else {
        weight = 1;
        moveRow(rows, at, kept++);
      }
    }
    return { firstIndex: start, lastIndex: kept - 1 };
  });
  rows.count = kept;
  return { merged: before - kept, stretches: moved };
}

function sameRegime(rows: LogRows, one: number, other: number, restA: number): boolean {
  if (rows.step && rows.step[one] !== rows.step[other]) return false;
  const currentA = rows.series[SLOT.current];
  if (!currentA) return true;
  const [oneA, otherA] = [currentA[one] as number, currentA[other] as number];
  const larger = Math.max(Math.abs(oneA), Math.abs(otherA));
  return larger <= restA || Math.abs(oneA - otherA) <= SAME_CURRENT_FRAC * larger;
}

function averageInto(rows: LogRows, into: number, from: number, weight: number): void {
  for (const slot of AVERAGED) {
    const column = rows.series[slot];
    if (!column) continue;
    const value = column[from] as number;
    const mean = column[into] as number;
    if (Number.isNaN(mean)) column[into] = value;
    else if (!Number.isNaN(value)) column[into] = mean + (value - mean) / weight;
  }
  // Counters only grow: the later reading counts.
  for (const slot of [SLOT.counterOut, SLOT.counterIn, SLOT.counterNet]) {
    const column = rows.series[slot];
    if (column) column[into] = column[from] as number;
  }
}
