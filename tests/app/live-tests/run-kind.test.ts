import { describe, expect, it } from 'vitest';
import { runNotices, runSummary } from '../../../src/app/live-tests/kinds/run-words.ts';
import { isAt, logPlace } from '../../../src/app/live-tests/runs/log-place-id.ts';
import { RUN_END_CHOICES } from '../../../src/schema/live-tests/run.ts';
import { runEndSentences, runEndWords } from '../../../src/text/live-tests/run.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const LOG = { logId: 'a'.repeat(64), firstLine: 12, lastLine: 3600, rowCount: 3589, gapCount: 0, mapping: {} };

describe('a capacity run in a line', () => {
  it.each([
    [{ chargeAh: 322.6, currentA: 60, end: 'lowVoltage' as const }, '322.6 Ah at 60 A · ended empty'],
    // Facts of the trade: 292.2 Ah, ended by a disconnect.
    [{ label: 'Hard', chargeAh: 292.2, end: 'packDisconnect' as const }, 'Hard · 292.2 Ah · cut off, no knee'],
    [{ chargeAh: 100, durationS: 18_000 }, '100 Ah at 20 A'],
    [{ energyWh: 1280 }, '1280 Wh'],
    [{ durationS: 5400 }, '90 min'],
    [{ currentA: 200 }, '200 A'],
    [{ end: 'unclear' as const }, 'end unclear'],
    [{}, ''],
  ])('%o reads “%s”', (run, expected) => {
    expect(plain(runSummary(run))).toBe(expected);
  });

  it('has a sentence and a short word for each of the 5 ends, no two alike', () => {
    expect(RUN_END_CHOICES.map((end) => runEndSentences[end]).filter((text) => text.endsWith('.'))).toHaveLength(5);
    expect(new Set(RUN_END_CHOICES.map((end) => runEndWords[end])).size).toBe(5);
  });
});

describe('calm words beneath a run', () => {
  it('come above the continuous claim of 100 A, not at it', () => {
    const nameplate = { continuousCurrentA: 100 };
    expect(runNotices({ currentA: 100 }, { nameplate })).toEqual([]);
    expect(runNotices({ currentA: 100.1 }, { nameplate }).map(plain)).toEqual([
      '100.1 A is above the continuous 100 A on the nameplate.',
    ]);
    expect(runNotices({ currentA: 100.1 }, { nameplate: {} })).toEqual([]);
    // What a log gives as its mean at a load set to 100 A.
    expect(runNotices({ currentA: 100.001 }, { nameplate })).toEqual([]);
  });

  it('come where charge and time make another current: 292 Ah in 20 min are 876 A, not 250 A', () => {
    // 292 ÷ (1200 ÷ 3600) = 876.
    expect(runNotices({ chargeAh: 292, durationS: 1200, currentA: 250 }, { nameplate: {} }).map(plain)).toEqual([
      'Charge and time make 876 A, not the 250 A typed. One of the three is off.',
    ]);
    expect(runNotices({ chargeAh: 322.6, durationS: 19_320, currentA: 60 }, { nameplate: {} })).toEqual([]);
  });

  it('come where energy and charge make no voltage of the pack: 416 Wh of 322.6 Ah are 1.29 V', () => {
    const nameplate = { nominalVoltageV: 12.8 };
    expect(runNotices({ chargeAh: 322.6, energyWh: 416 }, { nameplate }).map(plain)).toEqual([
      'Energy and charge make a mean of 1.29 V. One of the two is off.',
    ]);
    expect(runNotices({ chargeAh: 322.6, energyWh: 4160 }, { nameplate })).toEqual([]);
  });

  it('say of a run read from a log which lines it stands on', () => {
    expect(runNotices({ log: LOG }, { nameplate: {} })[0]).toContain('lines 12 to 3600');
  });
});

describe('the address of a log', () => {
  it('is the first 32 digits of its hash, and tells logs that differ there apart', () => {
    expect(logPlace('0123456789abcdef'.repeat(4))).toBe('log/0123456789abcdef0123456789abcdef');
    expect(isAt('a'.repeat(64), 'a'.repeat(32))).toBe(true);
    expect(isAt(`b${'a'.repeat(63)}`, 'a'.repeat(32))).toBe(false);
  });
});
