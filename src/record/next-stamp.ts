import type { Stamp } from '../schema/stamp.ts';
import { stampMs } from './stamp-ms.ts';

const MAX_COUNTER = 999_999;
const MAX_MS = 999_999_999_999_999;

export interface StampSource {
  /** The newest stamp this device has drawn or met; null before the first. */
  seen: Stamp | null;
  /** Wall clock, milliseconds since 1970. May have been set back: the stamp still rises. */
  nowMs: number;
  /** 32 hexadecimal digits. */
  deviceId: string;
}

/**
 * Draws the next stamp of the hybrid logical clock: always greater than `seen`, and as near to the wall clock as that
 * allows. When the counter is full, the milliseconds step on by one.
 *
 * Throws  RangeError if a field is malformed or the clock is at its last stamp.
 * Source  Kulkarni et al., "Logical Physical Clocks", OPODIS 2014, local event rule; text form ours
 * Check   tests/record/next-stamp.test.ts
 */
export function nextStamp({ seen, nowMs, deviceId }: StampSource): Stamp {
  if (!Number.isFinite(nowMs) || nowMs < 0) throw new RangeError(`nextStamp: nowMs must be 0 or more, got ${nowMs}`);
  if (!/^[0-9a-f]{32}$/.test(deviceId)) throw new RangeError(`nextStamp: deviceId must be 32 digits, got ${deviceId}`);
  const wallMs = Math.floor(nowMs);
  if (seen === null) return stampText(wallMs, 0, deviceId);
  const seenMs = stampMs(seen);
  if (wallMs > seenMs) return stampText(wallMs, 0, deviceId);
  const counter = Number(seen.slice(16, 22)) + 1;
  return counter > MAX_COUNTER ? stampText(seenMs + 1, 0, deviceId) : stampText(seenMs, counter, deviceId);
}

function stampText(ms: number, counter: number, deviceId: string): Stamp {
  if (ms > MAX_MS) throw new RangeError(`nextStamp: the clock has run out, got ${ms} ms`);
  return `${String(ms).padStart(15, '0')}.${String(counter).padStart(6, '0')}.${deviceId}`;
}
