import { expect, it } from 'vitest';
import { currencyDigits } from '../../src/units/currency-digits.ts';

// Outside copy: the engine's currency data (CLDR through ECMA-402). It departs from ISO 4217 for these, where people
// leave the minor unit out in daily use; ISO 4217 counts 3 for IQD and 2 for the others (from memory).
const BY_CUSTOM = 'AFN ALL COP HUF IDR IQD IRR KPW LAK LBP MGA MMK PKR SLL SOS SYP YER'.split(' ');

it('counts every currency as the engine does, but for 17 it rounds by custom: JPY 0, EUR 2, KWD 3', () => {
  expect([currencyDigits('JPY'), currencyDigits('EUR'), currencyDigits('KWD')]).toEqual([0, 2, 3]);
  const off = Intl.supportedValuesOf('currency').filter((currency) => {
    const options = new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions();
    return options.maximumFractionDigits !== currencyDigits(currency);
  });
  expect(off).toEqual(BY_CUSTOM);
});
