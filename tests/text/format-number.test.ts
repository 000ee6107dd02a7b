import { describe, expect, it } from 'vitest';
import {
  formatFixed,
  formatPercent,
  formatRange,
  formatScore,
  formatSignificant,
  formatTyped,
  outward,
} from '../../src/text/format-number.ts';

// ISO 80000-1 7.3: groups of three set off by a small space, never by a comma or point.
describe('formatFixed', () => {
  it('writes 1.2e20 with one decimal whole: its scaled figure would be written with an exponent', () => {
    expect(formatFixed(1.2e20, 1).replace(/\u202f/g, '')).toBe('120000000000000000000.0');
  });

  it.each([
    [58.85, 1, '58.9'],
    [1.005, 2, '1.01'],
    [-2.5, 0, '−3'],
    [0, 2, '0.00'],
    [-0.04, 1, '0.0'],
    [1234.5, 1, '1234.5'],
    [12345.678, 2, '12\u202f345.68'],
    [1234567, 0, '1\u202f234\u202f567'],
    [0.1 + 0.2, 2, '0.30'],
  ])('writes %d with %d decimals as %s', (value, digits, shown) => {
    expect(formatFixed(value, digits)).toBe(shown);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('refuses %d', (value) => {
    expect(() => formatFixed(value, 1)).toThrow(RangeError);
  });
});

it.each([
  [0.000123456, 3, '0.000123'],
  [9.996, 3, '10.0'],
  [123456, 3, '123\u202f000'],
  [98.4, 3, '98.4'],
  [-0.5, 2, '−0.50'],
  [0, 3, '0'],
])('writes %d to %d significant digits as %s', (value, digits, shown) => {
  expect(formatSignificant(value, digits)).toBe(shown);
});

it.each([
  [25.6, '25.6'],
  [100, '100'],
  [25.6 * 100, '2560'],
  [0.1 + 0.2, '0.3'],
  [-20, '−20'],
  [12800.5, '12\u202f800.5'],
])('writes %d as it was typed: %s', (value, shown) => {
  expect(formatTyped(value)).toBe(shown);
});

describe('a range is rounded outwards to one decimal', () => {
  it.each([
    [{ low: 52.37, high: 66.12 }, '52.3–66.2'],
    [{ low: 52.3, high: 66.2 }, '52.3–66.2'],
    // 0.1 + 0.2 = 0.300…04 and 100 · 0.7 · 0.841 carry float noise that must not cost a tenth.
    [{ low: 0.1 + 0.2, high: 0.1 + 0.2 }, '0.3–0.3'],
    [{ low: 58.900000000000006, high: 58.900000000000006 }, '58.9–58.9'],
    [{ low: 58.89999999999999, high: 58.9 }, '58.9–58.9'],
    [{ low: 0, high: 100 }, '0.0–100.0'],
    [{ low: 58.8999, high: 58.9001 }, '58.8–59.0'],
  ])('%o → %s', (range, shown) => {
    expect(formatRange(range)).toBe(shown);
  });

  it('holds every tenth from 0.0 to 100.0 where it is, computed as n / 10 and as n · 0.1', () => {
    for (let n = 0; n <= 1000; n += 1) {
      expect(outward({ low: n / 10, high: n * 0.1 }, 1)).toEqual({ low: n / 10, high: n / 10 });
    }
  });
});

it('rounds a factor outwards to two decimals: 0.4655–0.7 → 0.46–0.70', () => {
  expect(formatRange({ low: 0.4655, high: 0.7 }, 2)).toBe('0.46–0.70');
});

it('shows one figure only for a settled score: 58.85 → 58.9, else 58.8–58.9', () => {
  expect(formatScore({ low: 58.85, high: 58.85 }, true)).toBe('58.9');
  expect(formatScore({ low: 58.85, high: 58.85 }, false)).toBe('58.8–58.9');
});

it('keeps 100 % for all and 0 % for none: 0.999 → 99 %, 0.001 → 1 %, 0.415 → 42 %', () => {
  expect([1, 0.999, 0.415, 0.001, 0].map((frac) => formatPercent(frac))).toEqual(
    ['100', '99', '42', '1', '0'].map((shown) => `${shown}\u00a0%`),
  );
});
