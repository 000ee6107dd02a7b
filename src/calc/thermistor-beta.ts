import { degCFromKelvin, kelvinFromDegC } from '../units/temperature.ts';
import { requirePositive } from './rated-energy.ts';

/** An NTC thermistor by two figures: resistance at a reference temperature, and beta. */
export interface BetaThermistor {
  referenceOhm: number;
  /** 25 °C unless told. */
  referenceDegC?: number;
  betaK: number;
}

/**
 * Temperature of an NTC thermistor from its resistance: 1/T = 1/T₀ + ln(R/R₀)/B.
 *
 * Units   Ω, °C, K in; °C out.
 * Error   the beta model fits at its two temperatures only: with B25/85 it reads about 1 K high at 0 °C, 2.5 K high at
 *         −20 °C and 0.5 K low at 50 °C (10 kΩ, B = 3435). Steinhart–Hart does better.
 * Throws  RangeError if a resistance or beta is not positive, or a temperature is not above −273.15 °C.
 * Source  definition of B in IEC 60539-1 (from memory)
 * Check   tests/calc/thermistor.test.ts
 */
export function thermistorBetaDegC({ resistanceOhm, ...part }: BetaThermistor & { resistanceOhm: number }): number {
  requirePositive('thermistorBetaDegC: resistanceOhm', resistanceOhm);
  const referenceK = checkedReferenceK(part);
  const perK = 1 / referenceK + Math.log(resistanceOhm / part.referenceOhm) / part.betaK;
  // Far below the reference resistance, 1/T reaches 0: no temperature belongs to it.
  requirePositive('thermistorBetaDegC: resistanceOhm is too small for this part; its 1/T', perK);
  return degCFromKelvin(1 / perK);
}

/** Resistance of an NTC thermistor at a temperature: R = R₀ · exp(B · (1/T − 1/T₀)). Ω out; else as thermistorBetaDegC. */
export function thermistorBetaOhm({ tempDegC, ...part }: BetaThermistor & { tempDegC: number }): number {
  const tempK = checkedK('thermistorBetaOhm: tempDegC', tempDegC);
  return part.referenceOhm * Math.exp(part.betaK * (1 / tempK - 1 / checkedReferenceK(part)));
}

/** Beta from two points of a thermistor's table, B = ln(R₁/R₂) / (1/T₁ − 1/T₂). K out; the figure depends on the two. */
export function thermistorBetaK(one: ThermistorPoint, other: ThermistorPoint): number {
  for (const { resistanceOhm } of [one, other]) requirePositive('thermistorBetaK: resistanceOhm', resistanceOhm);
  const [oneK, otherK] = [one, other].map(({ tempDegC }) => checkedK('thermistorBetaK: tempDegC', tempDegC));
  if (oneK === undefined || otherK === undefined || oneK === otherK) {
    throw new RangeError(`thermistorBetaK: the two temperatures must differ, got ${one.tempDegC} twice`);
  }
  return Math.log(one.resistanceOhm / other.resistanceOhm) / (1 / oneK - 1 / otherK);
}

export interface ThermistorPoint {
  tempDegC: number;
  resistanceOhm: number;
}

/** Kelvin of a temperature that must be above absolute zero. */
export function checkedK(name: string, tempDegC: number): number {
  const tempK = kelvinFromDegC(tempDegC);
  if (!(tempK > 0 && Number.isFinite(tempK))) throw new RangeError(`${name} must be above −273.15, got ${tempDegC}`);
  return tempK;
}

function checkedReferenceK({ referenceOhm, referenceDegC = 25, betaK }: BetaThermistor): number {
  requirePositive('thermistorBeta: referenceOhm', referenceOhm);
  requirePositive('thermistorBeta: betaK', betaK);
  return checkedK('thermistorBeta: referenceDegC', referenceDegC);
}
