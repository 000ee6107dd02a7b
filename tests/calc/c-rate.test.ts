import { expect, it } from 'vitest';
import { cRatePerH } from '../../src/calc/c-rate.ts';

// Published: ATPL questions, a 5 Ah battery gives 5 A for 1 h, 2.5 A for 2 h, 10 A for 30 min. Hours are 1 ÷ rate.
it.each([
  [5, 1],
  [2.5, 2],
  [10, 0.5],
])('empties 5 Ah at %d A in %d h', (currentA, hours) => {
  expect(1 / cRatePerH({ currentA, ratedCapacityAh: 5 })).toBe(hours);
});

it('calls 20 A of 100 Ah 0.2 per hour, by the definition of It, and 0 A a rate of 0', () => {
  expect(cRatePerH({ currentA: 20, ratedCapacityAh: 100 })).toBe(0.2);
  expect(cRatePerH({ currentA: 0, ratedCapacityAh: 100 })).toBe(0);
});

it('refuses a negative current and a capacity of 0', () => {
  expect(() => cRatePerH({ currentA: -1, ratedCapacityAh: 100 })).toThrow(
    new RangeError('cRatePerH: currentA must be 0 or more, got -1'),
  );
  expect(() => cRatePerH({ currentA: 1, ratedCapacityAh: 0 })).toThrow(
    new RangeError('cRatePerH: ratedCapacityAh must be positive, got 0'),
  );
});
