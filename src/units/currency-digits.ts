/**
 * Digits after the decimal mark in which a currency is counted; 2 unless listed.
 * Source: ISO 4217 list one, minor units, from memory; checked against the engine's own copy of it in
 * tests/units/currency-digits.test.ts.
 */
const DIGITS: Readonly<Record<string, number>> = {
  BIF: 0,
  CLP: 0,
  DJF: 0,
  GNF: 0,
  ISK: 0,
  JPY: 0,
  KMF: 0,
  KRW: 0,
  PYG: 0,
  RWF: 0,
  UGX: 0,
  VND: 0,
  VUV: 0,
  XAF: 0,
  XOF: 0,
  XPF: 0,
  BHD: 3,
  IQD: 3,
  JOD: 3,
  KWD: 3,
  LYD: 3,
  OMR: 3,
  TND: 3,
};

/** Digits after the decimal mark for a three-letter currency code. */
export function currencyDigits(currency: string): number {
  return DIGITS[currency] ?? 2;
}
