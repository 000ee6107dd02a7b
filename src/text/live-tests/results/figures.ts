import type { UnitChoice } from '../../../units/unit-choice.ts';
import { formatFixed, formatSignificant, formatTyped, RANGE_DASH } from '../../format-number.ts';
import { NO_BREAK, withUnit } from '../../format-unit.ts';

/** Figures of the live tests: what was typed stays as it was typed, what was worked out is shown to four digits. */

const TYPED_DIGITS = 5;
const SHOWN_DIGITS = 4;
/** Beyond these a figure is written by its power of ten. */
const PLAIN = { least: 1e-4, most: 1e9 } as const;

/** "292.2", "0.0042", "12 346": up to five digits as they are, more to four, whole units always whole. */
export function figure(value: number): string {
  const typed = formatTyped(value);
  if (
    typed
      .replace(/e.*$/, '')
      .replace(/[^0-9]/g, '')
      .replace(/^0+/, '').length <= TYPED_DIGITS
  )
    return typed;
  const size = Math.abs(value);
  if (size < PLAIN.least || size >= PLAIN.most) return formatTyped(Number(value.toPrecision(SHOWN_DIGITS)));
  const digits = Math.max(SHOWN_DIGITS, Math.floor(Math.log10(size)) + 1);
  return trimmed(formatSignificant(value, digits));
}

export function figureIn(value: number, unit: string): string {
  return withUnit(figure(value), unit);
}

/** Figures that stand under one another: all with the decimals of the longest, so that 3.3 beside 3.297 is 3.300. */
export function inOneColumn(values: readonly number[], unit: string): (value: number) => string {
  const texts = values.map(figure);
  const decimals = Math.max(0, ...texts.map((text) => text.split('.')[1]?.length ?? 0));
  const isPlain = texts.every((text) => !text.includes('e')) && decimals <= SHOWN_DIGITS;
  return (value) => (isPlain ? withUnit(formatFixed(value, decimals), unit) : figureIn(value, unit));
}

/** To three digits: what rests on a section is not known better. */
export function roughIn(value: number, unit: string): string {
  return figureIn(Number(value.toPrecision(3)), unit);
}

/** "97.4 %". */
export function sharePercent(frac: number): string {
  return withUnit(formatFixed(frac * 100, 1), '%');
}

/** "0.2C": two digits say enough of a rate. */
export function rateC(ratePerH: number): string {
  return `${formatTyped(Number(ratePerH.toPrecision(2)))}C`;
}

/** Seconds up to two minutes, minutes and seconds up to two hours, then hours and minutes. */
export function duration(timeS: number): string {
  if (timeS < 120) return figureIn(timeS, 's');
  const wholeS = Math.round(timeS);
  if (wholeS < 2 * 3600) return pair(Math.floor(wholeS / 60), 'min', { rest: wholeS % 60, unit: 's' });
  const wholeMin = Math.round(timeS / 60);
  return pair(Math.floor(wholeMin / 60), 'h', { rest: wholeMin % 60, unit: 'min' });
}

function pair(count: number, unit: string, { rest, unit: restUnit }: { rest: number; unit: string }): string {
  const first = figureIn(count, unit);
  return rest === 0 ? first : `${first} ${figureIn(rest, restUnit)}`;
}

/** A figure known within limits: "35 mm²", or "31.2–35.7 mm²" where they differ as shown. */
export function span({ low, high }: { low: number; high: number }, unit: string): string {
  const [from, to] = [figure(low), figure(high)];
  return from === to ? withUnit(from, unit) : withUnit(`${from}${RANGE_DASH}${to}`, unit);
}

/** Coverage factor at which uncertainties are shown, about 95 %: the same as in calc/meter-uncertainty.ts. */
const COVERAGE_FACTOR = 2;

/** "± 1.7 Ah (k = 2)" of a standard uncertainty; a pure number has no unit. */
export function plusMinus(standardUncertainty: number, unit?: string): string {
  const shown = twoDigits(COVERAGE_FACTOR * standardUncertainty);
  return `±${NO_BREAK}${unit === undefined ? shown : withUnit(shown, unit)} (k = ${COVERAGE_FACTOR})`;
}

/** "± 0.62 per kWh" has its unit before it where it is money. */
export function plusMinusMoney(standardUncertainty: number, money: (amount: number) => string): string {
  return `±${NO_BREAK}${money(COVERAGE_FACTOR * standardUncertainty)} (k = ${COVERAGE_FACTOR})`;
}

function twoDigits(value: number): string {
  if (value !== 0 && (value < PLAIN.least || value >= PLAIN.most)) return formatTyped(Number(value.toPrecision(2)));
  return formatSignificant(value, 2);
}

/** A difference of temperatures, to three digits: kelvin, or as many °F. */
export function rise(riseK: number, units: UnitChoice): string {
  return units === 'metric' ? roughIn(riseK, 'K') : roughIn(riseK * 1.8, '°F');
}

/** "+0.14 %", "−0.3 %". */
export function signedPercent(frac: number): string {
  return withUnit(signed(formatFixed(frac * 100, 2), frac), '%');
}

export function signedIn(value: number, unit: string): string {
  return withUnit(signed(figure(value), value), unit);
}

function signed(text: string, value: number): string {
  return value > 0 && /[1-9]/.test(text) ? `+${text}` : text;
}

function trimmed(text: string): string {
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}
