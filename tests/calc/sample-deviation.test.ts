import { sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { sampleDeviation } from '../../src/calc/sample-deviation.ts';
import grubbs from '../fixtures/grubbs.json';
import mavro from '../fixtures/nist-strd-mavro.json';
import michelso from '../fixtures/nist-strd-michelso.json';

describe('sampleDeviation', () => {
  // NIST Statistical Reference Datasets, certified values.
  it.each([
    ['Mavro', 0.000429123454003053, mavro],
    ['Michelso', 0.0790105478190518, michelso],
  ] as const)('finds the certified standard deviation of NIST %s: %d', (_name, certified, { values, ...set }) => {
    expect(set.certified.standardDeviation).toBe(certified);
    expect(Math.abs(sampleDeviation(values) - certified)).toBeLessThan(1e-12);
  });

  it('finds 15.85256 for the example of the NIST e-Handbook, 1.3.5.17.1, as simple-statistics 7.12 does', () => {
    const { data } = grubbs.example;
    expect(sampleDeviation(data)).toBeCloseTo(15.85256, 5);
    expect(sampleDeviation(data)).toBeCloseTo(sampleStandardDeviation(data), 12);
  });

  it('finds √(1/2) · 1 mV for two values 1 mV apart at a large offset', () => {
    expect(sampleDeviation(Object.freeze([1e6, 1e6 + 0.001]))).toBeCloseTo(Math.SQRT1_2 * 0.001, 9);
  });

  it.each([
    ['one value', [1]],
    ['none', []],
    ['not finite', [1, Number.NaN]],
  ])('refuses bad input: %s', (_name, values) => {
    expect(() => sampleDeviation(values)).toThrow(RangeError);
  });
});
