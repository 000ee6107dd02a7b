import { expect, it } from 'vitest';
import { meanOf } from '../../src/calc/mean-of.ts';
import mavro from '../fixtures/nist-strd-mavro.json';
import michelso from '../fixtures/nist-strd-michelso.json';

it.each([
  ['Mavro: 2.001856', mavro],
  ['Michelso: 299.8524', michelso],
])('gives the certified mean of NIST StRD %s', (_name, { values, certified }) => {
  expect(Math.abs(meanOf(values) / certified.mean - 1)).toBeLessThan(1e-15 * 2);
});

it('keeps the digits of a thousand times 0.1, whose plain sum is off by 1.4e-12', () => {
  expect(Math.abs(meanOf(new Array(1000).fill(0.1)) - 0.1)).toBeLessThan(1e-16);
});

it('refuses no value and NaN', () => {
  expect(() => meanOf([])).toThrow(new RangeError('meanOf: needs at least 1 value, got 0'));
  expect(() => meanOf([1, Number.NaN])).toThrow(new RangeError('meanOf: values must be finite, got NaN'));
});
