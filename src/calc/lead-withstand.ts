import { adiabaticFinalDegC, adiabaticKAs05PerMm2 } from './adiabatic-k.ts';
import { requirePositive } from './rated-energy.ts';
import { type AdiabaticMetal, insulationLimitDegC, type LeadInsulation } from './tables/adiabatic-k.ts';

/** The equation counts no heat lost to the air, which holds to about 5 s. Source: BS 7671 434.5.2, IEC 60364-4-43. */
export const ADIABATIC_HOLDS_TO_S = 5;

export interface LoadedLead {
  areaMm2: number;
  currentA: number;
  /** Copper when left out. */
  metal?: AdiabaticMetal;
  /** What it is covered with, or k itself in A·s^½/mm². */
  insulation: LeadInsulation | number;
  /** Temperature of the conductor when the current begins. */
  startDegC: number;
}

export interface LeadWithstand {
  timeS: number;
  /** `atLeast`: over 5 s heat escapes, so it stands longer than this. */
  bound: 'exact' | 'atLeast';
  kAs05PerMm2: number;
  /** Temperature of the conductor at the end of that time. */
  finalDegC: number;
}

/**
 * Time a lead stands a current before its insulation is harmed: t = (k · S / I)².
 *
 * Shape   0 s when it starts at or above the insulation's limit.
 * Units   mm², A, °C in; s out.
 * Error   no heat lost: exact up to 5 s, beyond that a lower bound.
 * Throws  RangeError if area, current or k is not positive, or the start is not finite.
 * Source  BS 7671 434.5.2 and Table 43.1; IEC 60364-5-54 Annex A
 * Check   tests/calc/lead-withstand.test.ts
 */
export function leadWithstandS({
  areaMm2,
  currentA,
  metal = 'copper',
  insulation,
  startDegC,
}: LoadedLead): LeadWithstand {
  requirePositive('leadWithstandS: areaMm2', areaMm2);
  requirePositive('leadWithstandS: currentA', currentA);
  const { kAs05PerMm2, finalDegC } =
    typeof insulation === 'number'
      ? { kAs05PerMm2: insulation, finalDegC: adiabaticFinalDegC({ metal, startDegC, kAs05PerMm2: insulation }) }
      : kOf({ metal, startDegC, finalDegC: insulationLimitDegC(insulation, areaMm2) });
  const timeS = ((kAs05PerMm2 * areaMm2) / currentA) ** 2;
  return { timeS, bound: timeS > ADIABATIC_HOLDS_TO_S ? 'atLeast' : 'exact', kAs05PerMm2, finalDegC };
}

function kOf(span: { metal: AdiabaticMetal; startDegC: number; finalDegC: number }) {
  if (span.startDegC >= span.finalDegC) return { kAs05PerMm2: 0, finalDegC: span.startDegC };
  return { kAs05PerMm2: adiabaticKAs05PerMm2(span), finalDegC: span.finalDegC };
}
