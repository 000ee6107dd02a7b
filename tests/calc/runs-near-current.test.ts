import { expect, it } from 'vitest';
import { rateCount, runsNearCurrent } from '../../src/calc/runs-near-current.ts';

const currents = (currentsA: number[], aboutA: number) =>
  runsNearCurrent(
    currentsA.map((currentA) => Object.freeze({ currentA })),
    aboutA,
  ).map((run) => run.currentA);

it('takes 18 to 22 A for 20 A, both ends included, 4 of 6 runs in their order', () => {
  expect(currents([22, 17.99, 18, 20, 22.01, 20.1], 20)).toEqual([22, 18, 20, 20.1]);
});

it('takes 0.66 A for 0.6 A, though 0.1 · 0.6 is not exact in binary', () => {
  expect(currents([0.66, 0.54], 0.6)).toEqual([0.66, 0.54]);
});

it('sees one rate in 20 and 22 A, two in 20 and 22.1 A, none in nothing', () => {
  expect(rateCount([20, 22])).toBe(1);
  expect(rateCount([22.1, 20])).toBe(2);
  expect(rateCount([20])).toBe(1);
  expect(rateCount([])).toBe(0);
});

it('sees three rates in 100, 20, 21, 60 and 66 A, counting 66 A with 60 A', () => {
  expect(rateCount([100, 20, 21, 60, 66])).toBe(3);
});

it('refuses a current of 0 on either side', () => {
  expect(() => currents([1], 0)).toThrow(new RangeError('runsNearCurrent: currentA must be positive, got 0'));
  expect(() => currents([0], 1)).toThrow(new RangeError('runsNearCurrent: currentA of a run must be positive, got 0'));
});
