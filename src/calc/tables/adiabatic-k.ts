export type AdiabaticMetal = 'copper' | 'aluminium' | 'steel';

/**
 * Constants of heating without loss: heat capacity by volume Qc, reciprocal temperature coefficient at 0 °C β,
 * resistivity at 20 °C.
 *
 * Source  IEC 60364-5-54 Annex A (the same in IEC 60949), read in one page and in public code citing it
 * Check   tests/calc/adiabatic-k.test.ts
 */
export const ADIABATIC_METALS: Readonly<
  Record<AdiabaticMetal, { heatJPerKMm3: number; betaDegC: number; resistivityOhmMm: number }>
> = {
  copper: { heatJPerKMm3: 3.45e-3, betaDegC: 234.5, resistivityOhmMm: 17.241e-6 },
  aluminium: { heatJPerKMm3: 2.5e-3, betaDegC: 228, resistivityOhmMm: 28.264e-6 },
  steel: { heatJPerKMm3: 3.8e-3, betaDegC: 202, resistivityOhmMm: 138e-6 },
};

export const LEAD_INSULATIONS = ['pvc', 'xlpe', 'epr', 'silicone'] as const;
export type LeadInsulation = (typeof LEAD_INSULATIONS)[number];

/** Above this a thermoplastic lead's limit is lower. Source: BS 7671 Table 43.1. */
const LARGE_PVC_MM2 = 300;

/**
 * Temperature the insulation of a lead stands for at most 5 s.
 *
 * Source  BS 7671 Table 43.1 / IEC 60364-5-54, read in two pages
 * Check   tests/calc/lead-withstand.test.ts
 */
export function insulationLimitDegC(insulation: LeadInsulation, areaMm2: number): number {
  if (insulation === 'pvc') return areaMm2 > LARGE_PVC_MM2 ? 140 : 160;
  return insulation === 'silicone' ? 350 : 250;
}
