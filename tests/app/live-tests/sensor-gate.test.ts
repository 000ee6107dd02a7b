import { describe, expect, it } from 'vitest';
import { sensorGate } from '../../../src/app/live-tests/sensor-gate.ts';

const HOUR_MS = 3_600_000;
/** 2026-11-24, 18:00 UTC. */
const PASSED_MS = Date.UTC(2026, 10, 24, 18);
const passed = { sensorGates: [{ passedAtMs: PASSED_MS, day: '2026-11-24', acknowledged: [] }] };

describe('the gate of the hot and cold sensor tests', () => {
  it('is closed before it was ever passed', () => {
    expect(sensorGate({ sensorGates: [] }, PASSED_MS, 0)).toEqual({ open: false, last: null, goodUntilMs: null });
  });

  it('holds like Make safe: until just before 4 hours have gone, and not on the next local day', () => {
    expect(sensorGate(passed, PASSED_MS + 4 * HOUR_MS - 1, 0).open).toBe(true);
    expect(sensorGate(passed, PASSED_MS + 4 * HOUR_MS, 0).open).toBe(false);
    expect(sensorGate(passed, PASSED_MS + HOUR_MS, 300).open).toBe(false);
    expect(sensorGate(passed, PASSED_MS, 0).goodUntilMs).toBe(PASSED_MS + 4 * HOUR_MS);
  });

  it('goes by the latest of 2 passages', () => {
    const early = { passedAtMs: PASSED_MS - 6 * HOUR_MS, day: '2026-11-24', acknowledged: [] };
    expect(sensorGate({ sensorGates: [early, ...passed.sensorGates] }, PASSED_MS + 1, 0).open).toBe(true);
    expect(sensorGate({ sensorGates: [early] }, PASSED_MS + 1, 0).open).toBe(false);
  });
});
