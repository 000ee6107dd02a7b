import type { SensorGate } from '../../schema/live-tests/cut-off.ts';
import type { LiveTests } from '../../schema/live-tests/live-tests.ts';
import { goodUntilMs, isFresh } from '../passage.ts';

export interface SensorGateNow {
  open: boolean;
  last: SensorGate | null;
  goodUntilMs: number | null;
}

/** Whether the gate of the hot and cold sensor tests holds at a moment, as Make safe does: four hours, one local day. */
export function sensorGate(
  { sensorGates }: Pick<LiveTests, 'sensorGates'>,
  atMs: number,
  offsetMinutes: number,
): SensorGateNow {
  const last = sensorGates.at(-1) ?? null;
  if (!last) return { open: false, last: null, goodUntilMs: null };
  return { open: isFresh(last, atMs, offsetMinutes), last, goodUntilMs: goodUntilMs(last) };
}
