import { describe, expect, it } from 'vitest';
import { makeSafeGate } from '../../src/app/make-safe-gate.ts';
import type { MakeSafe } from '../../src/schema/make-safe.ts';

const HOUR_MS = 3_600_000;
/** 2026-11-24, 18:00 UTC. */
const PASSED_MS = Date.UTC(2026, 10, 24, 18);
const passage = (passedAtMs: number, day: string): MakeSafe => ({
  passedAtMs,
  day,
  packVoltageV: 26.4,
  chargeState: 'low',
  company: 'second-person',
  coveredTerminalsPhoto: 'a'.repeat(64),
  acknowledged: [],
});
const record = { makeSafe: [passage(PASSED_MS, '2026-11-24')] };

describe('the gate of Make safe', () => {
  it('is closed before it was ever passed', () => {
    expect(makeSafeGate({ makeSafe: [] }, PASSED_MS, 0)).toEqual({ open: false, last: null, goodUntilMs: null });
  });

  it('is open until just before 4 hours have gone, and closed from then on', () => {
    expect(makeSafeGate(record, PASSED_MS + 4 * HOUR_MS - 1, 0).open).toBe(true);
    expect(makeSafeGate(record, PASSED_MS + 4 * HOUR_MS, 0).open).toBe(false);
    expect(makeSafeGate(record, PASSED_MS, 0).goodUntilMs).toBe(PASSED_MS + 4 * HOUR_MS);
  });

  it('closes at local midnight, 5 hours ahead of UTC one hour after 18:00 UTC', () => {
    // 18:00 UTC is 23:00 there; the passage was made on 24 November there.
    expect(makeSafeGate(record, PASSED_MS + HOUR_MS - 1, 300).open).toBe(true);
    expect(makeSafeGate(record, PASSED_MS + HOUR_MS, 300).open).toBe(false);
  });

  it('is closed when the phone’s clock was set back by more than 1 minute since', () => {
    expect(makeSafeGate(record, PASSED_MS - 60_000, 0).open).toBe(true);
    expect(makeSafeGate(record, PASSED_MS - 60_001, 0).open).toBe(false);
  });

  it('goes by the latest of 2 passages', () => {
    const twice = { makeSafe: [passage(PASSED_MS - 5 * HOUR_MS, '2026-11-24'), passage(PASSED_MS, '2026-11-24')] };
    expect(makeSafeGate(twice, PASSED_MS + HOUR_MS, 0).open).toBe(true);
  });
});
