import { describe, expect, it } from 'vitest';
import { completeRun, INCOMPLETE_REASONS, type RunConditions } from '../../src/calc/complete-run.ts';
import { RUN_ENDS } from '../../src/calc/run-end-name.ts';

// A 300 Ah, 12.8 V pack begun full and run down to the knee. Thresholds: our choice (0.05C, 30 min).
const FULL: RunConditions = Object.freeze({
  end: 'lowVoltage',
  chargedToV: 14.6,
  makerChargeVoltageV: 14.6,
  taperA: 15,
  ratedCapacityAh: 300,
  restMin: 30,
});
const reasons = (changed: Partial<RunConditions>) => {
  const result = completeRun(Object.freeze({ ...FULL, ...changed }));
  return result.complete ? [] : result.because;
};

it('calls a run complete that is exactly on all limits: 14.6 V, 15 A of 300 Ah, 30 min', () => {
  expect(completeRun(FULL)).toEqual({ complete: true });
});

it('takes 1 of the 5 ends for complete', () => {
  expect(RUN_ENDS.map((end) => [end, reasons({ end })])).toEqual([
    ['lowVoltage', []],
    ['packDisconnect', ['notEndedLow']],
    ['stopped', ['notEndedLow']],
    ['taper', ['notEndedLow']],
    ['unclear', ['endUnknown']],
  ]);
  expect(reasons({ end: null })).toEqual(['endUnknown']);
});

describe('each limit, on it, and just past it', () => {
  it.each<[string, Partial<RunConditions>, string[]]>([
    ['charged to 14.59 V of 14.6 V', { chargedToV: 14.59 }, ['notChargedFull']],
    ['charged to 14.7 V of 14.6 V', { chargedToV: 14.7 }, []],
    ['8 · 3.65 V against 29.2 V', { chargedToV: 8 * 3.65, makerChargeVoltageV: 29.2 }, []],
    ['taper 15.1 A of 300 Ah', { taperA: 15.1 }, ['taperTooHigh']],
    ['taper 0.115 A of 2.3 Ah, not exact in binary', { taperA: 0.115, ratedCapacityAh: 2.3 }, []],
    ['taper 0 A', { taperA: 0 }, []],
    ['rested 29.9 min', { restMin: 29.9 }, ['restTooShort']],
    ['rested 0 min', { restMin: 0 }, ['restTooShort']],
  ])('%s', (_name, changed, expected) => {
    expect(reasons(changed)).toEqual(expected);
  });
});

it.each(['chargedToV', 'makerChargeVoltageV', 'taperA', 'ratedCapacityAh', 'restMin'] as const)(
  'cannot tell how a run began when only %s is missing: 1 reason',
  (missing) => {
    expect(reasons({ [missing]: undefined })).toEqual(['startUnknown']);
  },
);

it('tells all it knows: a missing rest hides neither the low charge nor the taper nor the end, 4 reasons', () => {
  expect(reasons({ end: 'stopped', chargedToV: 14, taperA: 30, restMin: undefined })).toEqual([
    'notEndedLow',
    'startUnknown',
    'notChargedFull',
    'taperTooHigh',
  ]);
});

it('knows nothing of an empty run: end and start unknown, 2 of the 6 reasons', () => {
  expect(completeRun({ end: null })).toEqual({ complete: false, because: ['endUnknown', 'startUnknown'] });
  expect(INCOMPLETE_REASONS).toHaveLength(6);
});

it.each<[string, Partial<RunConditions>]>([
  ['chargedToV must be positive, got 0', { chargedToV: 0 }],
  ['makerChargeVoltageV must be positive, got -14.6', { makerChargeVoltageV: -14.6 }],
  ['taperA must be 0 or more, got -1', { taperA: -1 }],
  ['ratedCapacityAh must be positive, got NaN', { ratedCapacityAh: Number.NaN }],
  ['restMin must be 0 or more, got Infinity', { restMin: Number.POSITIVE_INFINITY }],
])('refuses bad input: %s', (message, changed) => {
  expect(() => reasons(changed)).toThrow(new RangeError(`completeRun: ${message}`));
});
