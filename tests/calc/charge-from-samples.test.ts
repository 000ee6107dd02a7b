import { describe, expect, it } from 'vitest';
import { chargeFromSamplesAh } from '../../src/calc/charge-from-samples.ts';

describe('chargeFromSamplesAh', () => {
  it('makes 2.5 Ah of 5 A over half an hour (closed form)', () => {
    expect(chargeFromSamplesAh({ timeS: [0, 600, 1800], currentA: [5, 5, 5] })).toBeCloseTo(2.5, 12);
  });

  // 20 A over 4 h 58 min 30 s: a run on an electronic load, closed form.
  it('makes 99.5 Ah of 20 A over 4 h 58 min 30 s', () => {
    expect(chargeFromSamplesAh({ timeS: [0, 17_910], currentA: [20, 20] })).toBeCloseTo(99.5, 12);
  });

  // By hand: half hours of (20 + 20.1)/2, (20.1 + 19.9)/2, (19.9 + 20)/2, (20 + 20)/2, (20 + 19.8)/2 A and ten minutes
  // of (19.8 + 20.2)/2 A: 10.025 + 10 + 9.975 + 10 + 9.95 + 10/3.
  it('makes 53.2833 Ah of a run logged each half hour, its last step ten minutes', () => {
    const timeS = [0, 1800, 3600, 5400, 7200, 9000, 9600];
    const currentA = [20, 20.1, 19.9, 20, 20, 19.8, 20.2];
    expect(chargeFromSamplesAh({ timeS, currentA })).toBeCloseTo(49.95 + 10 / 3, 12);
  });

  it('is exact for a straight ramp however uneven the samples: 0 to 7.2 A over an hour is 3.6 Ah (closed form)', () => {
    const timeS = [0, 1, 17, 900, 3599, 3600];
    expect(chargeFromSamplesAh({ timeS, currentA: timeS.map((s) => (7.2 * s) / 3600) })).toBeCloseTo(3.6, 12);
  });

  it('overshoots i = t² on [0, 3] in steps of 1 by the 0.5 As that DLMF 3.5.1 predicts', () => {
    const chargeAs = 3600 * chargeFromSamplesAh({ timeS: [0, 1, 2, 3], currentA: [0, 1, 4, 9] });
    expect(chargeAs - 9).toBeCloseTo(0.5, 12);
  });

  it('adds nothing for equal stamps, and gives 0 for one sample', () => {
    expect(chargeFromSamplesAh({ timeS: [0, 60, 60, 120], currentA: [1, 1, 3, 3] })).toBeCloseTo(4 / 60, 12);
    expect(chargeFromSamplesAh({ timeS: [5], currentA: [9] })).toBe(0);
  });

  it('keeps the sign of the current: -1 A over an hour is -1 Ah', () => {
    expect(chargeFromSamplesAh({ timeS: [0, 3600], currentA: [-1, -1] })).toBe(-1);
  });

  it.each([
    ['no sample', { timeS: [], currentA: [] }],
    ['lengths differ', { timeS: [0, 1], currentA: [1] }],
    ['time falls', { timeS: [0, 2, 1], currentA: [1, 1, 1] }],
    ['a current is not finite', { timeS: [0, 1], currentA: [1, Number.NaN] }],
    ['a time is not finite', { timeS: [0, Number.POSITIVE_INFINITY], currentA: [1, 1] }],
  ])('refuses bad input: %s', (_, samples) => {
    expect(() => chargeFromSamplesAh(samples)).toThrow(RangeError);
  });
});
