/** Metals a lead, strip or bus bar of a pack is made of. */
export const CONDUCTOR_METALS = ['copper', 'aluminium', 'aluminium1350', 'aluminium6101', 'steel', 'nickel'] as const;
export type ConductorMetal = (typeof CONDUCTOR_METALS)[number];

export interface ConductorMaterial {
  /** Resistivity at 20 °C. */
  ohmMm2PerM: number;
  /** Temperature coefficient of resistance at 20 °C. */
  alphaPerK: number;
  /** `read`: both figures stood in a readable copy. `partly`: see the remark beside the row. */
  status: 'read' | 'partly';
}

/**
 * Resistivity and temperature coefficient at 20 °C.
 *
 * Thin nickel or tin plating on a bus bar does not count: take the base metal. A nickel-plated steel strip is steel, not nickel.
 *
 * Source  beside each row; none of the documents themselves was opened, copies were
 * Check   tests/calc/tables/conductor-materials.test.ts
 */
export const CONDUCTOR_MATERIALS: Readonly<Record<ConductorMetal, ConductorMaterial>> = {
  /** International annealed copper standard, 58 m/(Ω·mm²); NBS Handbook 100. */
  copper: { ohmMm2PerM: 0.017241, alphaPerK: 0.00393, status: 'read' },
  /** Conductor aluminium, 61 % IACS; four copies agree on 28.264. */
  aluminium: { ohmMm2PerM: 0.028264, alphaPerK: 0.00403, status: 'read' },
  /** Bus bar 1350, 60 % IACS, 34.8 m/(Ω·mm²): Industrial Power Engineering Handbook. */
  aluminium1350: { ohmMm2PerM: 0.028736, alphaPerK: 0.00396, status: 'read' },
  /** Bus bar 6101A, 55 % IACS, 31.9 m/(Ω·mm²): the same handbook. Take this where the alloy is not known. */
  aluminium6101: { ohmMm2PerM: 0.031348, alphaPerK: 0.00363, status: 'read' },
  /** IEC 60949; α from its β of 202 °C: 1 / (202 + 20). */
  steel: { ohmMm2PerM: 0.138, alphaPerK: 1 / 222, status: 'read' },
  /** Resistivity from a connector handbook whose columns were scrambled in the copy; α from a page on resistors. */
  nickel: { ohmMm2PerM: 0.069, alphaPerK: 0.005866, status: 'partly' },
};
