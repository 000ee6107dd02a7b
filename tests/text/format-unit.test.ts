import { expect, it } from 'vitest';
import {
  formatBox,
  formatLength,
  formatMass,
  formatMoney,
  formatTemperature,
  formatValue,
} from '../../src/text/format-unit.ts';

const spaced = (text: string) => text.replaceAll('\u00a0', ' ');

it('never lets a line end between a figure and its unit', () => {
  expect(formatValue(25.6, 'V')).toBe('25.6\u00a0V');
});

// 1 lb = 0.45359237 kg, 1 in = 25.4 mm, °F = 1.8 °C + 32 (NIST SP 811): 22.1 kg = 48.72 lb, 521 mm = 20.51 in.
it('shows 22.1 kg as 48.7 lb, 521 mm as 20.51 in and −20 °C as −4 °F for those who read imperial', () => {
  expect(spaced(formatMass(22.1, 'metric'))).toBe('22.1 kg');
  expect(spaced(formatMass(22.1, 'imperial'))).toBe('48.7 lb');
  expect(spaced(formatLength(521, 'metric'))).toBe('521 mm');
  expect(spaced(formatLength(521, 'imperial'))).toBe('20.51 in');
  expect(spaced(formatTemperature(-20, 'metric'))).toBe('−20 °C');
  expect(spaced(formatTemperature(-20, 'imperial'))).toBe('−4 °F');
});

it('writes a box of 521 × ? × 220 mm with an open dash for the side not measured', () => {
  expect(spaced(formatBox([521, undefined, 220], 'metric'))).toBe('521 × – × 220 mm');
});

// ISO 4217 minor units: EUR 2, JPY 0, KWD 3.
it('writes EUR 649.00, JPY 98 000 and KWD 12.500', () => {
  expect([formatMoney(649, 'EUR'), formatMoney(98000, 'JPY'), formatMoney(12.5, 'KWD')].map(spaced)).toEqual([
    'EUR 649.00',
    'JPY 98\u202f000',
    'KWD 12.500',
  ]);
});
