import { describe, expect, it } from 'vitest';
import { chargeCurrentCutOff } from '../../src/calc/charge-current-cut-off.ts';
import { temperatureCutOff } from '../../src/calc/temperature-cut-off.ts';
import { voltageCutOff } from '../../src/calc/voltage-cut-off.ts';

// The limits of these trials stand for a checklist's: common practice, no source.
const cold = (actedAtDegC: number | null, reachedDegC: number | null) =>
  temperatureCutOff({ side: 'low', limitDegC: 0, lateDegC: -10, actedAtDegC, reachedDegC });
const hot = (actedAtDegC: number | null, reachedDegC: number | null) =>
  temperatureCutOff({ side: 'high', limitDegC: 65, lateDegC: 80, actedAtDegC, reachedDegC });

describe('temperatureCutOff', () => {
  it.each([
    ['acted', 2],
    ['acted', 0],
    ['actedLate', -0.1],
    ['actedLate', -10],
    ['didNot', -10.1],
    ['didNot', -18],
  ] as const)('cold, %s: charging blocked at %d °C', (word, actedAtDegC) => {
    expect(cold(actedAtDegC, null)).toBe(word);
  });

  it('did not: a sensor that still lets charging through at −10 °C or well below', () => {
    expect(cold(null, -10)).toBe('didNot');
    expect(cold(null, -18)).toBe('didNot');
  });

  it('is not tested while charging was tried only down to −3 or −9.9 °C, or not at all', () => {
    expect(cold(null, -3)).toBe('notTested');
    expect(cold(null, -9.9)).toBe('notTested');
    expect(cold(null, null)).toBe('notTested');
  });

  it.each([
    ['acted', 60, null],
    ['acted', 65, null],
    ['actedLate', 65.1, null],
    ['actedLate', 80, null],
    ['didNot', 80.1, null],
    ['didNot', null, 80],
    ['notTested', null, 79.9],
    ['notTested', null, 20],
  ] as const)('hot, %s: acted at %s °C, reached %s °C', (word, actedAtDegC, reachedDegC) => {
    expect(hot(actedAtDegC, reachedDegC)).toBe(word);
  });

  it('throws where late lies before the limit, or a figure is not finite', () => {
    const trial = { limitDegC: 0, actedAtDegC: null, reachedDegC: null };
    expect(() => temperatureCutOff({ ...trial, side: 'low', lateDegC: 5 })).toThrow(RangeError);
    expect(() => temperatureCutOff({ ...trial, side: 'high', lateDegC: -5 })).toThrow(RangeError);
    expect(() => cold(Number.NaN, null)).toThrow(RangeError);
    expect(() => cold(null, Number.NaN)).toThrow(RangeError);
    expect(temperatureCutOff({ ...trial, side: 'low', lateDegC: 0 })).toBe('notTested');
  });
});

describe('voltageCutOff', () => {
  // 202 Ah cell data sheet (Rev 0, 2020): 3.65 V charge, 2.5 V end of discharge; late limits are our choice.
  it.each([
    ['acted', 'high', 3.65, null],
    ['actedLate', 'high', 3.75, null],
    ['actedLate', 'high', 3.799, null],
    // The checklist: failed where a cell reaches 3.80 V, or 2.00 V, before the cut.
    ['didNot', 'high', 3.8, null],
    ['didNot', 'low', 2.0, null],
    ['didNot', 'high', null, 3.8],
    ['notTested', 'high', null, 3.7],
    ['acted', 'low', 2.5, null],
    ['actedLate', 'low', 2.3, null],
    ['didNot', 'low', 1.9, null],
    ['didNot', 'low', null, 2.0],
    ['notTested', 'low', null, 2.4],
  ] as const)('%s, %s side: acted at %s V, reached %s V', (word, side, actedAtV, reachedV) => {
    const limits = side === 'high' ? { limitV: 3.65, lateV: 3.8 } : { limitV: 2.5, lateV: 2 };
    expect(voltageCutOff({ side, ...limits, actedAtV, reachedV })).toBe(word);
  });
});

describe('chargeCurrentCutOff', () => {
  const trial = (actedAtA: number | null, reachedA: number | null, afterS: number | null) =>
    chargeCurrentCutOff({ limitA: 50, lateA: 75, actedAtA, reachedA, afterS });

  it.each([
    ['acted', 50, null, 10],
    ['acted', 48, null, null],
    ['acted', 50, null, 60],
    ['actedLate', 50, null, 61],
    ['actedLate', 70, null, 2],
    ['didNot', 80, null, 2],
    ['didNot', null, 75, 60],
    ['notTested', null, 75, 59],
    ['notTested', null, 75, null],
    ['notTested', null, 60, 600],
    ['notTested', null, null, null],
  ] as const)('%s: acted at %s A, carried %s A, after %s s', (word, actedAtA, reachedA, afterS) => {
    expect(trial(actedAtA, reachedA, afterS)).toBe(word);
  });

  it('throws at negative seconds', () => {
    expect(() => trial(50, null, -1)).toThrow(RangeError);
  });
});
