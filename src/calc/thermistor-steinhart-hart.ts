import { degCFromKelvin } from '../units/temperature.ts';
import { requirePositive } from './rated-energy.ts';
import { requireFinite } from './require-finite.ts';
import { checkedK, type ThermistorPoint } from './thermistor-beta.ts';

/** Coefficients of 1/T = a + b · ln R + c · (ln R)³, R in Ω, T in K. */
export interface SteinhartHart {
  a: number;
  b: number;
  c: number;
}

/**
 * Temperature of an NTC thermistor from its resistance by the Steinhart–Hart equation.
 *
 * Units   Ω in; °C out.
 * Error   within some hundredths of a kelvin inside the range the coefficients were fitted to.
 * Throws  RangeError if the resistance is not positive, a coefficient not finite, or no temperature belongs to them.
 * Source  J. S. Steinhart, S. R. Hart, Deep-Sea Research 15 (1968) 497; coefficients and tables: temperature-probe manuals
 * Check   tests/calc/thermistor.test.ts
 */
export function thermistorSteinhartHartDegC({
  resistanceOhm,
  ...part
}: SteinhartHart & { resistanceOhm: number }): number {
  requirePositive('thermistorSteinhartHartDegC: resistanceOhm', resistanceOhm);
  checkCoefficients(part);
  const log = Math.log(resistanceOhm);
  const perK = part.a + part.b * log + part.c * log ** 3;
  requirePositive('thermistorSteinhartHartDegC: 1/T by these coefficients', perK);
  return degCFromKelvin(1 / perK);
}

/**
 * Resistance of an NTC thermistor at a temperature: the real root of the cubic in ln R, by Cardano's formula.
 *
 * Units   °C in; Ω out.
 * Throws  RangeError if the temperature is not above −273.15 °C, or the coefficients do not rise steadily with ln R
 *         (b > 0, c ≥ 0), when more than one resistance may belong to a temperature.
 * Source  NIST DLMF 1.11(iii)
 * Check   tests/calc/thermistor.test.ts
 */
export function thermistorSteinhartHartOhm({ tempDegC, a, b, c }: SteinhartHart & { tempDegC: number }): number {
  checkCoefficients({ a, b, c });
  if (!(b > 0 && c >= 0)) throw new RangeError(`thermistorSteinhartHartOhm: needs b > 0 and c ≥ 0, got ${b} and ${c}`);
  const perK = 1 / checkedK('thermistorSteinhartHartOhm: tempDegC', tempDegC) - a;
  if (c === 0) return Math.exp(perK / b);
  const half = perK / (2 * c);
  const root = Math.sqrt((b / (3 * c)) ** 3 + half ** 2);
  // One of the two cube roots would be a difference of nearly equal numbers: take it from their product, −b / 3c.
  const large = Math.cbrt(half + Math.sign(half || 1) * root);
  return Math.exp(large - b / (3 * c) / large);
}

/**
 * Coefficients through three points of a thermistor's table, exactly.
 *
 * Throws  RangeError if a resistance is not positive, a temperature not above −273.15 °C, or two resistances are equal.
 * Source  linear system of three equations, by divided differences
 * Check   tests/calc/thermistor.test.ts
 */
export function steinhartHartThrough(
  points: readonly [ThermistorPoint, ThermistorPoint, ThermistorPoint],
): SteinhartHart {
  const [one, two, three] = points;
  const [log1, log2, log3] = [logOf(one), logOf(two), logOf(three)];
  if (log1 === log2 || log2 === log3 || log1 === log3) {
    throw new RangeError('steinhartHartThrough: the three resistances must differ');
  }
  const perK1 = 1 / checkedK('steinhartHartThrough: tempDegC', one.tempDegC);
  const slope2 = (1 / checkedK('steinhartHartThrough: tempDegC', two.tempDegC) - perK1) / (log2 - log1);
  const slope3 = (1 / checkedK('steinhartHartThrough: tempDegC', three.tempDegC) - perK1) / (log3 - log1);
  const c = (slope3 - slope2) / (log3 - log2) / (log1 + log2 + log3);
  const b = slope2 - c * (log1 ** 2 + log1 * log2 + log2 ** 2);
  const found: SteinhartHart = { a: perK1 - (b + c * log1 ** 2) * log1, b, c };
  checkCoefficients(found);
  return found;
}

function logOf({ resistanceOhm }: ThermistorPoint): number {
  requirePositive('steinhartHartThrough: resistanceOhm', resistanceOhm);
  return Math.log(resistanceOhm);
}

function checkCoefficients({ a, b, c }: SteinhartHart): void {
  for (const [name, value] of Object.entries({ a, b, c })) requireFinite(`SteinhartHart: ${name}`, value);
}
