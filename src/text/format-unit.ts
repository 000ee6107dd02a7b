import { currencyDigits } from '../units/currency-digits.ts';
import { inFromMm } from '../units/length-in.ts';
import { lbFromKg } from '../units/mass-lb.ts';
import { degFFromDegC } from '../units/temperature.ts';
import type { UnitChoice } from '../units/unit-choice.ts';
import { formatFixed, formatTyped } from './format-number.ts';

/** Stands between a figure and its unit, so that no line ends between them. */
export const NO_BREAK = '\u00a0';

/** Joins a figure already written to its unit. */
export function withUnit(figure: string, unit: string): string {
  return `${figure}${NO_BREAK}${unit}`;
}

/** A value as typed, with its unit: "25.6 V". */
export function formatValue(value: number, unit: string): string {
  return withUnit(formatTyped(value), unit);
}

/** Of a value that may have been typed in the other system of units: six significant digits, no conversion noise. */
function withoutNoise(value: number): number {
  return Number(value.toPrecision(6));
}

/** Mass: as typed in kg, or pounds to one decimal. */
export function formatMass(massKg: number, units: UnitChoice): string {
  return units === 'metric'
    ? formatValue(withoutNoise(massKg), 'kg')
    : withUnit(formatFixed(lbFromKg(massKg), 1), 'lb');
}

/** Length: as typed in mm, or inches to two decimals. */
export function formatLength(lengthMm: number, units: UnitChoice): string {
  return units === 'metric'
    ? formatValue(withoutNoise(lengthMm), 'mm')
    : withUnit(formatFixed(inFromMm(lengthMm), 2), 'in');
}

/** Length × width × height with one unit at the end; any of them may be absent, shown as an open dash. */
export function formatBox(sidesMm: readonly (number | undefined)[], units: UnitChoice): string {
  const sides = sidesMm.map((side) => {
    if (side === undefined) return '\u2013';
    return units === 'metric' ? formatTyped(withoutNoise(side)) : formatFixed(inFromMm(side), 2);
  });
  return withUnit(sides.join(`${NO_BREAK}×${NO_BREAK}`), units === 'metric' ? 'mm' : 'in');
}

/** Temperature: as typed in °C, or whole °F. */
export function formatTemperature(tempDegC: number, units: UnitChoice): string {
  return units === 'metric'
    ? formatValue(withoutNoise(tempDegC), '°C')
    : withUnit(formatFixed(degFFromDegC(tempDegC), 0), '°F');
}

/** Money in the minor units of its currency, code first: "EUR 649.00". */
export function formatMoney(amount: number, currency: string): string {
  return `${currency}${NO_BREAK}${formatFixed(amount, currencyDigits(currency))}`;
}

/** Money whose currency may not be known: then the bare figure, to two decimals at most. */
export function formatPrice(amount: number, currency: string | undefined): string {
  return currency === undefined ? formatTyped(Number(amount.toFixed(2))) : formatMoney(amount, currency);
}
