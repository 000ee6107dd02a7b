import { expect, it } from 'vitest';
import { median, percentile } from './percentiles.ts';

it('takes 3 as the median of 5, 3, 1 and 2.5 as that of 4, 1, 3, 2', () => {
  expect(median(Object.freeze([5, 3, 1]))).toBe(3);
  expect(median(Object.freeze([4, 1, 3, 2]))).toBe(2.5);
});

// Nearest rank, closed form: of 1 … n the p-th percentile is ⌈n·p/100⌉.
it.each([
  [100, 95, 95],
  [79, 95, 76],
  [60, 95, 57],
  [20, 95, 19],
  [1, 95, 1],
  [10, 100, 10],
  [10, 5, 1],
])('finds, among 1 … %i in falling order, the %ith percentile at %i', (count, sharePct, expected) => {
  const values = Array.from({ length: count }, (_, place) => count - place);
  expect(percentile(Object.freeze(values), sharePct)).toBe(expected);
});

it('refuses empty lists and shares outside 0 – 100 %', () => {
  expect(() => median([])).toThrow(RangeError);
  expect(() => percentile([], 95)).toThrow(RangeError);
  for (const sharePct of [0, -5, 100.1, Number.NaN]) expect(() => percentile([1], sharePct)).toThrow(RangeError);
});
