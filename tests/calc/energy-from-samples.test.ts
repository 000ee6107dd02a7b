import { describe, expect, it } from 'vitest';
import { energyFromSamplesWh } from '../../src/calc/energy-from-samples.ts';

describe('energyFromSamplesWh', () => {
  it('makes 64 Wh of 12.8 V and 10 A over half an hour (closed form)', () => {
    expect(
      energyFromSamplesWh({ timeS: [0, 700, 1800], voltageV: [12.8, 12.8, 12.8], currentA: [10, 10, 10] }),
    ).toBeCloseTo(64, 12);
  });

  it('overshoots p = t² on [0, 3] by the 0.5 J that DLMF 3.5.1 predicts', () => {
    const samples = { timeS: [0, 1, 2, 3], voltageV: [0, 1, 2, 3], currentA: [0, 1, 2, 3] };
    expect(3600 * energyFromSamplesWh(samples) - 9).toBeCloseTo(0.5, 12);
  });

  // Powers by hand: 268, 266.325, 262.68, 263, 261.6, 255.42 and 202 W; the trapezoids sum to 695.775833… Wh.
  it('makes 695.7758 Wh of a run logged each half hour, its last step ten minutes', () => {
    const timeS = [0, 1800, 3600, 5400, 7200, 9000, 9600];
    const currentA = [20, 20.1, 19.9, 20, 20, 19.8, 20.2];
    const voltageV = [13.4, 13.25, 13.2, 13.15, 13.08, 12.9, 10];
    expect(energyFromSamplesWh({ timeS, currentA, voltageV })).toBeCloseTo(
      (268 / 2 + 266.325 + 262.68 + 263 + 261.6 + 255.42 / 2) / 2 + (255.42 + 202) / 12,
      12,
    );
  });

  it('makes 89.125 J of an uneven log, by hand', () => {
    // 1·(20+22)/2 + 1.5·(22+18)/2 + 2.5·(18+12.5)/2 = 21 + 30 + 38.125 = 89.125
    const samples = { timeS: [0, 1, 2.5, 5], voltageV: [10, 11, 12, 12.5], currentA: [2, 2, 1.5, 1] };
    expect(3600 * energyFromSamplesWh(samples)).toBeCloseTo(89.125, 10);
  });

  it('is negative when the load gives energy back: -12 Wh', () => {
    expect(energyFromSamplesWh({ timeS: [0, 3600], voltageV: [12, 12], currentA: [-1, -1] })).toBe(-12);
  });

  it.each([
    ['no sample', { timeS: [], voltageV: [], currentA: [] }],
    ['lengths differ', { timeS: [0, 1], voltageV: [1, 1], currentA: [1] }],
    ['time falls', { timeS: [1, 0], voltageV: [1, 1], currentA: [1, 1] }],
    ['a voltage is not finite', { timeS: [0, 1], voltageV: [1, Number.NaN], currentA: [1, 1] }],
  ])('refuses bad input: %s', (_, samples) => {
    expect(() => energyFromSamplesWh(samples)).toThrow(RangeError);
  });
});
