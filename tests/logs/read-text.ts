import { guessMapping } from '../../src/logs/guess-mapping.ts';
import type { LayoutChoice } from '../../src/logs/log-layout.ts';
import type { LogMapping } from '../../src/logs/log-mapping.ts';
import type { LogReading } from '../../src/logs/log-reading.ts';
import type { LogRun } from '../../src/logs/log-run.ts';
import { readLog } from '../../src/logs/read-log.ts';
import { runsOf } from '../../src/logs/runs-of.ts';

export interface ReadText {
  mapping: LogMapping;
  reading: LogReading;
  runs: LogRun[];
}

/** Reads a log as the app does, mapping guessed; `change` is what a person set right. */
export function readText(
  text: string | Uint8Array,
  change: (mapping: LogMapping) => LogMapping = (same) => same,
): ReadText {
  return readBytes(typeof text === 'string' ? new TextEncoder().encode(text) : text, { change });
}

export function readBytes(
  bytes: Uint8Array,
  { change = (same: LogMapping) => same, choice = {} as LayoutChoice } = {},
): ReadText {
  const mapping = change(guessMapping(bytes, choice));
  const reading = finish(readLog(bytes, mapping));
  return { mapping, reading, runs: runsOf(reading) };
}

export function finish<T>(steps: Generator<unknown, T>): T {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/** Text as Latin-1 bytes. */
export function latin1(text: string): Uint8Array {
  return Uint8Array.from(text, (character) => character.charCodeAt(0));
}

export function quantities({ mapping }: ReadText): string {
  return mapping.columns.map(({ quantity, unit }) => (unit === '' ? quantity : `${quantity} ${unit}`)).join(', ');
}
