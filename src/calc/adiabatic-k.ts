import { requirePositive } from './rated-energy.ts';
import { ADIABATIC_METALS, type AdiabaticMetal } from './tables/adiabatic-k.ts';

/**
 * k of the adiabatic equation: what a conductor takes per mm² while it warms from one temperature to another.
 *
 * Units   °C in; A·s^½/mm² out.
 * Error   constants as published; BS 7671 prints whole numbers made from rounded constants, 3 of its rows are 1 higher or lower.
 * Throws  RangeError if the start is not above absolute zero of the model (−β) or the end is below the start.
 * Source  IEC 60364-5-54 Annex A: k = √(Qc (β + 20) / ρ₂₀ · ln((β + θf) / (β + θi)))
 * Check   tests/calc/adiabatic-k.test.ts
 */
export function adiabaticKAs05PerMm2({ metal, startDegC, finalDegC }: AdiabaticSpan): number {
  const { betaDegC } = ADIABATIC_METALS[metal];
  requireStart('adiabaticKAs05PerMm2', startDegC, betaDegC);
  if (!(finalDegC >= startDegC && Number.isFinite(finalDegC))) {
    throw new RangeError(`adiabaticKAs05PerMm2: finalDegC must be startDegC or more, got ${finalDegC}`);
  }
  return Math.sqrt(kSquaredOf(metal) * Math.log((betaDegC + finalDegC) / (betaDegC + startDegC)));
}

/**
 * Temperature a conductor reaches when k is used up: the inverse of `adiabaticKAs05PerMm2`.
 *
 * Units   °C, A·s^½/mm² in; °C out.
 * Throws  RangeError if k is not positive or the start is not above −β.
 * Check   tests/calc/adiabatic-k.test.ts
 */
export function adiabaticFinalDegC({ metal, startDegC, kAs05PerMm2 }: AdiabaticUse): number {
  const { betaDegC } = ADIABATIC_METALS[metal];
  requireStart('adiabaticFinalDegC', startDegC, betaDegC);
  requirePositive('adiabaticFinalDegC: kAs05PerMm2', kAs05PerMm2);
  return (betaDegC + startDegC) * Math.exp(kAs05PerMm2 ** 2 / kSquaredOf(metal)) - betaDegC;
}

export interface AdiabaticSpan {
  metal: AdiabaticMetal;
  startDegC: number;
  finalDegC: number;
}

export interface AdiabaticUse {
  metal: AdiabaticMetal;
  startDegC: number;
  kAs05PerMm2: number;
}

/** K² of the standard: 226² for copper, 148² for aluminium, 78² for steel, unrounded. */
function kSquaredOf(metal: AdiabaticMetal): number {
  const { heatJPerKMm3, betaDegC, resistivityOhmMm } = ADIABATIC_METALS[metal];
  return (heatJPerKMm3 * (betaDegC + 20)) / resistivityOhmMm;
}

function requireStart(name: string, startDegC: number, betaDegC: number): void {
  if (!(startDegC > -betaDegC && Number.isFinite(startDegC))) {
    throw new RangeError(`${name}: startDegC must be above ${-betaDegC} °C, got ${startDegC}`);
  }
}
