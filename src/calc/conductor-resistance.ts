import { requirePositive } from './rated-energy.ts';
import { CONDUCTOR_MATERIALS, type ConductorMetal } from './tables/conductor-materials.ts';

export interface Conductor {
  metal: ConductorMetal;
  areaMm2: number;
  lengthMm: number;
  /** Of the metal itself; 20 when left out. */
  tempDegC?: number;
}

/**
 * Direct-current resistance of a solid conductor: R = ρ₂₀ · L / S · (1 + α₂₀ (T − 20)).
 *
 * Units   mm², mm, °C in; mΩ out (Ω·mm²/m · mm / mm² is mΩ).
 * Error   a stranded lead is about 2 % higher by the lay of its strands, a tinned one 3–5 %: see cable-resistance.ts.
 *         The straight line in T is good to about 1 % from −40 to 150 °C.
 * Throws  RangeError if area or length is not positive, or the temperature is below −40 °C or above 250 °C.
 * Source  IACS and IEC 60949 constants in tables/conductor-materials.ts
 * Check   tests/calc/conductor-resistance.test.ts
 */
export function conductorResistanceMohm({ metal, areaMm2, lengthMm, tempDegC = 20 }: Conductor): number {
  requirePositive('conductorResistanceMohm: areaMm2', areaMm2);
  requirePositive('conductorResistanceMohm: lengthMm', lengthMm);
  requireConductorTempDegC('conductorResistanceMohm: tempDegC', tempDegC);
  const { ohmMm2PerM, alphaPerK } = CONDUCTOR_MATERIALS[metal];
  return ((ohmMm2PerM * lengthMm) / areaMm2) * (1 + alphaPerK * (tempDegC - 20));
}

/** Throws RangeError unless a conductor can be that warm: −40 to 250 °C (our choice: the line in T and every lead end there). */
export function requireConductorTempDegC(name: string, tempDegC: number): void {
  if (!(tempDegC >= -40 && tempDegC <= 250)) throw new RangeError(`${name} must be −40 to 250 °C, got ${tempDegC}`);
}
