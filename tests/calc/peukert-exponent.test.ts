import fc from 'fast-check';
import { linearRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { completeRun } from '../../src/calc/complete-run.ts';
import { peukertExponent } from '../../src/calc/peukert-exponent.ts';
import { rateRetentionOfRuns } from '../../src/calc/rate-retention.ts';
import type { RunEnd } from '../../src/calc/run-end-name.ts';
import measured from '../fixtures/lfp-18650-rate-runs.json';

/** Published examples give current and hours. */
const exponentOf = (pairs: [currentA: number, hours: number][]) =>
  peukertExponent(Object.freeze(pairs.map(([currentA, hours]) => ({ currentA, chargeAh: currentA * hours }))));

describe('published worked examples', () => {
  it('gives 1.415 for 20 h at 5 A and 7.5 h at 10 A (printed; address not kept)', () => {
    expect(
      exponentOf([
        [5, 20],
        [10, 7.5],
      ]),
    ).toBeCloseTo(1.415, 3);
  });

  // electrotechnik.net, "Peukert's law and discharge of lead-acid": 100 Ah at 1 A, k 1.2, 5 A: printed 14.5 h.
  it('gets back k = 1.2 from 100 h at 1 A and 14.5 h at 5 A', () => {
    expect(
      exponentOf([
        [1, 100],
        [5, 14.5],
      ]),
    ).toBeCloseTo(1.2, 3);
  });

  // easycalculation.com, "Battery capacity discharge time": 250 Ah at 1 A, n 1.3, 20 A: 5.088631644 h, 101.772632884 Ah.
  it('gets back n = 1.3 from 250 Ah at 1 A and 5.088631644 h or 101.772632884 Ah at 20 A', () => {
    expect(
      exponentOf([
        [1, 250],
        [20, 5.088631644],
      ]),
    ).toBeCloseTo(1.3, 9);
    expect(
      peukertExponent([
        { currentA: 1, chargeAh: 250 },
        { currentA: 20, chargeAh: 101.772632884 },
      ]),
    ).toBeCloseTo(1.3, 9);
  });

  // The same law for a capacity at the H-hour rate, t = H·(C/(I·H))^k with 100 Ah at 20 h, as published; hours by it.
  it.each([
    [1.2, 10, 8.705505632961241],
    [1.2, 20, 3.7892914162759954],
    [1.02, 100, 0.9418449208830277],
  ])('gets back k = %d from 20 h at 5 A and, at %d A, %d h', (k, currentA, hours) => {
    expect(
      exponentOf([
        [5, 20],
        [currentA, hours],
      ]),
    ).toBeCloseTo(k, 12);
  });
});

it('gets back any k from three runs with Iᵏ·t constant (closed form)', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.8, max: 1.7, noNaN: true }), (k) => {
      const runs = [1, 7, 30].map((currentA): [number, number] => [currentA, 100 / currentA ** k]);
      expect(exponentOf(runs)).toBeCloseTo(k, 10);
    }),
    { seed: 5 },
  );
});

// Figures from a measured 2 Ah LFP cell; licence, citation and method in the fixture.
describe('a measured LFP cell at C/20, C/2 and 1C', () => {
  const { currentsA, chargesAh, durationsH, peukertExponent: expected } = measured;

  it('has the exponent 1.01989, from currents and hours', () => {
    expect(exponentOf(currentsA.map((currentA, place) => [currentA, durationsH[place]!]))).toBeCloseTo(expected, 5);
  });

  it('has 1.0199 to within 0.0002 from charges, whose currents are printed to 4 digits', () => {
    const runs = currentsA.map((currentA, place) => ({ currentA, chargeAh: chargesAh[place]! }));
    expect(Math.abs(peukertExponent(runs)! - expected)).toBeLessThan(2e-4);
    const other = linearRegression(
      runs.map(({ currentA, chargeAh }) => [Math.log10(currentA), Math.log10(chargeAh / currentA)]),
    );
    // simple-statistics 7.12.1, and logarithms of another base.
    expect(peukertExponent(runs)).toBeCloseTo(-other.m, 12);
  });
});

// Common practice, no source: two 300 Ah packs.
describe('facts of the trade', () => {
  const begun = { chargedToV: 14.6, makerChargeVoltageV: 14.6, taperA: 10, ratedCapacityAh: 300, restMin: 60 };
  const completeOf = (runs: { currentA: number; chargeAh: number; end: RunEnd }[]) =>
    runs.filter(({ end }) => completeRun({ ...begun, end }).complete);

  it('finds no exponent and no retention where the hard run, 292.2 Ah, ended in a disconnect', () => {
    const complete = completeOf([
      { currentA: 60, chargeAh: 322.6, end: 'lowVoltage' },
      { currentA: 200, chargeAh: 292.2, end: 'packDisconnect' },
    ]);
    expect(complete.map((run) => run.chargeAh)).toEqual([322.6]);
    expect(peukertExponent(complete)).toBeNull();
    expect(rateRetentionOfRuns(complete)).toBeNull();
  });

  it('finds an exponent within 0.001 of 1 and 99.9 % where 292.2 Ah and 292.0 Ah are both complete', () => {
    const complete = completeOf([
      { currentA: 60, chargeAh: 292.2, end: 'lowVoltage' },
      { currentA: 200, chargeAh: 292, end: 'lowVoltage' },
    ]);
    expect(Math.abs(peukertExponent(complete)! - 1)).toBeLessThan(0.001);
    expect(rateRetentionOfRuns(complete)?.retentionFrac).toBeCloseTo(0.999, 3);
  });
});

it('finds no exponent in no run, or in 20 and 22 A; one in 20 and 22.1 A', () => {
  const equalCharges = (currentsA: number[]) => currentsA.map((currentA) => ({ currentA, chargeAh: 100 }));
  expect(peukertExponent([])).toBeNull();
  expect(peukertExponent(equalCharges([20, 22]))).toBeNull();
  expect(peukertExponent(equalCharges([20, 22.1]))).toBeCloseTo(1, 12);
});

it('refuses a current or a charge that is not positive', () => {
  expect(() => peukertExponent([{ currentA: -20, chargeAh: 100 }])).toThrow(
    new RangeError('peukertExponent: currentA must be positive, got -20'),
  );
  expect(() => peukertExponent([{ currentA: 20, chargeAh: Number.NaN }])).toThrow(
    new RangeError('peukertExponent: chargeAh must be positive, got NaN'),
  );
});
