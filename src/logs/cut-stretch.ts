import { holdStart } from './hold-start.ts';
import type { LogColumns, LogStretch } from './log-reading.ts';
import type { RestLevel } from './rest-level.ts';

/** Loaded rows of one direction and one regime, first and last included. */
export interface LoadedPart {
  firstIndex: number;
  lastIndex: number;
  flow: 'out' | 'in';
  held: boolean;
}

/** Our choice: a current that falls by half from one row to the next was switched, not tapered. */
const SWITCHED_FRAC = 0.5;
/** Our choice. */
const DIP_ROWS = 5;
/** Our choice: parts whose mean currents are within a tenth belong to one run, whatever the step number says. */
const SAME_CURRENT_FRAC = 0.1;
/** A step number that changes in a fifth of the rows numbers something else. Our choice. */
const MOST_STEP_CHANGES_FRAC = 0.2;

/**
 * Cuts one stretch into loaded parts: where the load begins and ends, where the current turns round, where a step
 * begins with another current, and where the voltage is held while the current falls.
 */
export function cutStretch(columns: LogColumns, stretch: LogStretch, level: RestLevel): LoadedPart[] {
  const { currentA } = columns;
  if (currentA === null) return [];
  const pieces = loadedPieces(currentA, stepsOf(columns, stretch), { stretch, level });
  return joinSame(
    currentA,
    pieces.flatMap((piece) => splitHold(columns, piece)),
  );
}

function loadedPieces(
  currentA: Float64Array,
  step: Uint32Array | null,
  { stretch, level }: { stretch: LogStretch; level: RestLevel },
): LoadedPart[] {
  const pieces: LoadedPart[] = [];
  const { loadedA, taperA } = level;
  let open = false;
  let lastA = 0;
  for (let at = stretch.firstIndex; at <= stretch.lastIndex; at++) {
    const now = currentA[at] as number;
    const size = Math.abs(now);
    const sameStep = step === null || step[at] === step[at - 1];
    const last: LoadedPart | null =
      open && now > 0 === (pieces.at(-1)?.flow === 'out') ? (pieces.at(-1) ?? null) : null;
    const goesOn = size >= loadedA || (size >= taperA && size >= SWITCHED_FRAC * lastA);
    const dips =
      !goesOn && last !== null && lastA < loadedA && comesBack(currentA, { at, last: stretch.lastIndex, lastA });
    if (last !== null && sameStep && (goesOn || dips)) last.lastIndex = at;
    else if ((size >= loadedA && size > 0) || (last !== null && goesOn)) {
      pieces.push({ firstIndex: at, lastIndex: at, flow: now > 0 ? 'out' : 'in', held: false });
      open = true;
    } else open = false;
    if (!dips) lastA = size;
  }
  return pieces;
}

/** Near the end of a taper a noisy current dips for a row or two: it goes on if it is soon back at half of what it was. */
function comesBack(currentA: Float64Array, { at, last, lastA }: { at: number; last: number; lastA: number }): boolean {
  const wayOut = (currentA[at] as number) > 0;
  for (let next = at + 1; next <= Math.min(last, at + DIP_ROWS); next++) {
    const amperes = currentA[next] as number;
    if (amperes > 0 === wayOut && Math.abs(amperes) >= SWITCHED_FRAC * lastA) return true;
  }
  return false;
}

function stepsOf({ step }: LogColumns, { firstIndex, lastIndex }: LogStretch): Uint32Array | null {
  if (step === null) return null;
  let changes = 0;
  for (let at = firstIndex + 1; at <= lastIndex; at++) if (step[at] !== step[at - 1]) changes++;
  return changes > MOST_STEP_CHANGES_FRAC * (lastIndex - firstIndex + 1) ? null : step;
}

function splitHold({ voltageV, currentA }: LogColumns, piece: LoadedPart): LoadedPart[] {
  if (voltageV === null || currentA === null) return [piece];
  const { firstIndex, lastIndex } = piece;
  const from = holdStart(voltageV.subarray(firstIndex, lastIndex + 1), currentA.subarray(firstIndex, lastIndex + 1));
  if (from === null) return [piece];
  const hold = { ...piece, firstIndex: firstIndex + from, held: true };
  return from === 0 ? [hold] : [{ ...piece, lastIndex: firstIndex + from - 1 }, hold];
}

/** Neighbours that touch, run the same way with the same current and are not held were cut for nothing. */
function joinSame(currentA: Float64Array, parts: readonly LoadedPart[]): LoadedPart[] {
  const joined: LoadedPart[] = [];
  for (const part of parts) {
    const last = joined.at(-1);
    if (last !== undefined && touches(last, part) && sameRun(currentA, last, part)) last.lastIndex = part.lastIndex;
    else joined.push({ ...part });
  }
  return joined;
}

export function touches(one: LoadedPart, next: LoadedPart): boolean {
  return one.lastIndex + 1 === next.firstIndex;
}

function sameRun(currentA: Float64Array, one: LoadedPart, next: LoadedPart): boolean {
  if (one.flow !== next.flow || one.held !== next.held) return false;
  if (one.held) return true;
  const [oneA, nextA] = [meanOf(currentA, one), meanOf(currentA, next)];
  return Math.abs(oneA - nextA) <= SAME_CURRENT_FRAC * Math.max(Math.abs(oneA), Math.abs(nextA));
}

function meanOf(values: Float64Array, { firstIndex, lastIndex }: LoadedPart): number {
  let sum = 0;
  for (let at = firstIndex; at <= lastIndex; at++) sum += values[at] as number;
  return sum / (lastIndex - firstIndex + 1);
}
