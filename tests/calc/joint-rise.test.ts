import { expect, it } from 'vitest';
import { riseAtRatedK } from '../../src/calc/joint-rise.ts';

it('makes 8 K at 50 A 32 K at 100 A (closed form)', () => {
  expect(riseAtRatedK({ riseK: 8, currentA: 50, ratedA: 100 })).toBe(32);
});

it('keeps no rise at no rise', () => {
  expect(riseAtRatedK({ riseK: 0, currentA: 50, ratedA: 100 })).toBe(0);
});

it.each([
  ['no current', { currentA: 0 }],
  ['no rated current', { ratedA: 0 }],
  ['cooler than before', { riseK: -1 }],
  ['a rise that is not a number', { riseK: Number.NaN }],
])('refuses bad input: %s', (_name, bad) => {
  expect(() => riseAtRatedK({ riseK: 8, currentA: 50, ratedA: 100, ...bad })).toThrow(RangeError);
});
