import { expect, it } from 'vitest';
import { rateRetentionFrac, rateRetentionOfRuns } from '../../src/calc/rate-retention.ts';

// Common practice, no source: a 300 Ah pack that gave 292.2 Ah at 0.2C and 292.0 Ah at 200 A, both complete.
it('keeps 99.9 % of 292.2 Ah at 292.0 Ah', () => {
  expect(rateRetentionFrac({ gentleAh: 292.2, hardAh: 292 })).toBeCloseTo(0.999, 3);
  const runs = Object.freeze([
    Object.freeze({ currentA: 200, chargeAh: 292 }),
    Object.freeze({ currentA: 60, chargeAh: 292.2 }),
  ]);
  const retention = rateRetentionOfRuns(runs);
  expect(retention).toMatchObject({ gentleA: 60, hardA: 200 });
  expect(retention?.retentionFrac).toBeCloseTo(0.999, 3);
});

it('sets the mean of the gentlest rate against that of the hardest, the middle left out: 96/100 (by hand)', () => {
  const runs = [
    { currentA: 20, chargeAh: 99 },
    { currentA: 21, chargeAh: 101 },
    { currentA: 50, chargeAh: 5 },
    { currentA: 100, chargeAh: 96 },
  ];
  expect(rateRetentionOfRuns(runs)).toEqual({ gentleA: 20.5, hardA: 100, retentionFrac: 0.96 });
});

it('knows no retention of no run, one run, or two at one rate', () => {
  expect(rateRetentionOfRuns([])).toBeNull();
  expect(rateRetentionOfRuns([{ currentA: 60, chargeAh: 322.6 }])).toBeNull();
  expect(
    rateRetentionOfRuns([
      { currentA: 60, chargeAh: 300 },
      { currentA: 61, chargeAh: 299 },
    ]),
  ).toBeNull();
});

it('refuses charges and currents that are not positive', () => {
  expect(() => rateRetentionFrac({ gentleAh: 0, hardAh: 1 })).toThrow('gentleAh must be positive, got 0');
  expect(() => rateRetentionFrac({ gentleAh: 1, hardAh: -1 })).toThrow('hardAh must be positive, got -1');
  expect(() => rateRetentionOfRuns([{ currentA: Number.NaN, chargeAh: 1 }])).toThrow(
    new RangeError('rateRetentionOfRuns: currentA must be positive, got NaN'),
  );
});
