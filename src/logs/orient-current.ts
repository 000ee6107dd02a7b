import type { OutIs } from './log-mapping.ts';
import type { LogStretch } from './log-reading.ts';
import { type LogRows, SLOT } from './log-rows.ts';
import { restLevel } from './rest-level.ts';
import { STATE } from './state-words.ts';

/**
 * Turns the current so that positive is out of the pack, in place. Where the numbers are magnitudes, the state column
 * says the direction of each row; without one, each loaded part takes it from what its voltage does.
 */
export function orientCurrent(rows: LogRows, stretches: readonly LogStretch[], outIs: OutIs): void {
  const currentA = rows.series[SLOT.current];
  if (!currentA) return;
  if (outIs === 'negative') {
    for (let at = 0; at < rows.count; at++) currentA[at] = 0 - (currentA[at] as number);
  } else if (outIs === 'unsigned') {
    if (rows.state) byState(currentA, rows.state, rows.count);
    else for (const stretch of stretches) byVoltage(rows, currentA, stretch);
  }
}

function byState(currentA: Float64Array, state: Uint8Array, count: number): void {
  for (let at = 0; at < count; at++) {
    if (state[at] === STATE.in) currentA[at] = 0 - Math.abs(currentA[at] as number);
    if (state[at] === STATE.out) currentA[at] = Math.abs(currentA[at] as number);
  }
}

function byVoltage(rows: LogRows, currentA: Float64Array, { firstIndex, lastIndex }: LogStretch): void {
  const timeS = rows.series[SLOT.time];
  const voltageV = rows.series[SLOT.voltage];
  if (!timeS || !voltageV) return;
  const end = lastIndex + 1;
  const { loadedA } = restLevel(timeS.subarray(firstIndex, end), currentA.subarray(firstIndex, end));
  for (let at = firstIndex; at < end; ) {
    if (Math.abs(currentA[at] as number) < loadedA) {
      at++;
      continue;
    }
    const start = at;
    while (at < end && Math.abs(currentA[at] as number) >= loadedA && sameStep(rows, start, at)) at++;
    // From the rest before it, where there is one: the jump at switching on says more than the plateau.
    const from = voltageV[start > firstIndex ? start - 1 : start] as number;
    if ((voltageV[at - 1] as number) > from) {
      for (let row = start; row < at; row++) currentA[row] = 0 - (currentA[row] as number);
    }
  }
}

function sameStep({ step }: LogRows, one: number, other: number): boolean {
  return step === null || step[one] === step[other];
}
