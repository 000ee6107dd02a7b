import { describe, expect, it } from 'vitest';
import { linearScale } from '../../../src/drawing/plots/linear-scale.ts';

describe('linearScale', () => {
  it('puts 20 of 18 … 28 at a fifth of the way, upwards from 200 to 100: 180', () => {
    const place = linearScale({ low: 18, high: 28 }, 200, 100);
    expect(place(20)).toBeCloseTo(180, 9);
    expect(place(28)).toBeCloseTo(100, 9);
  });

  it.each([Number.NaN, Infinity])('has no place for %d', (value) => {
    expect(() => linearScale({ low: 0, high: 1 }, 0, 1)(value)).toThrow(RangeError);
  });

  it.each([
    [3, 3],
    [Number.NaN, 1],
    [0, Infinity],
  ])('refuses the range %d … %d', (low, high) => {
    expect(() => linearScale({ low, high }, 0, 1)).toThrow(RangeError);
  });
});
