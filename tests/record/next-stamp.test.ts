import fc from 'fast-check';
import { expect, it } from 'vitest';
import { nextStamp } from '../../src/record/next-stamp.ts';
import { stampMs } from '../../src/record/stamp-ms.ts';
import { DEVICE, OTHER_DEVICE, stampAt } from './made-entries.ts';

it('draws 000000000001000.000000 at 1000 ms on a new device', () => {
  expect(nextStamp({ seen: null, nowMs: 1000.9, deviceId: DEVICE })).toBe(`000000000001000.000000.${DEVICE}`);
});

it('counts on to 000001 within one millisecond and starts at 000000 in the next', () => {
  expect(nextStamp({ seen: stampAt(1000), nowMs: 1000, deviceId: DEVICE })).toBe(stampAt(1000, DEVICE, 1));
  expect(nextStamp({ seen: stampAt(1000, DEVICE, 7), nowMs: 1001, deviceId: DEVICE })).toBe(stampAt(1001));
});

it('stays at 5000 ms and counts when the wall clock was set back to 10 ms', () => {
  expect(nextStamp({ seen: stampAt(5000, DEVICE, 3), nowMs: 10, deviceId: DEVICE })).toBe(stampAt(5000, DEVICE, 4));
});

it('steps the milliseconds on by one when the counter is at 999999', () => {
  expect(nextStamp({ seen: stampAt(5000, DEVICE, 999_999), nowMs: 10, deviceId: DEVICE })).toBe(stampAt(5001));
});

it('passes a stamp seen from another device', () => {
  const next = nextStamp({ seen: stampAt(9000, 'f'.repeat(32), 2), nowMs: 8000, deviceId: OTHER_DEVICE });
  expect(next).toBe(stampAt(9000, OTHER_DEVICE, 3));
});

it('always rises, whatever the wall clock does, over 200 random walks of 50 steps', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(4_000_000_000_000), { minLength: 2, maxLength: 50 }), (clockMs) => {
      let seen: string | null = null;
      for (const nowMs of clockMs) {
        const next = nextStamp({ seen, nowMs, deviceId: DEVICE });
        if (seen !== null) expect(next > seen).toBe(true);
        expect(stampMs(next)).toBeGreaterThanOrEqual(nowMs);
        seen = next;
      }
    }),
    { numRuns: 200 },
  );
});

it.each([
  ['a clock before 1970', { seen: null, nowMs: -1, deviceId: DEVICE }, 'nowMs'],
  ['no clock', { seen: null, nowMs: Number.NaN, deviceId: DEVICE }, 'nowMs'],
  ['a short device id', { seen: null, nowMs: 1, deviceId: 'abc' }, 'deviceId'],
  ['a malformed stamp', { seen: 'yesterday', nowMs: 1, deviceId: DEVICE }, 'clock stamp'],
  ['the last stamp', { seen: stampAt(999_999_999_999_999, DEVICE, 999_999), nowMs: 1, deviceId: DEVICE }, 'run out'],
])('refuses %s', (_, source, reason) => {
  expect(() => nextStamp(source)).toThrow(reason);
});
