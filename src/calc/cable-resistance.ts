import { requireConductorTempDegC } from './conductor-resistance.ts';
import { requirePositive } from './rated-energy.ts';
import { CONDUCTOR_MATERIALS } from './tables/conductor-materials.ts';
import { IEC60228_OHM_PER_KM, iec60228FactorTo20DegC } from './tables/iec60228.ts';
import { NEC_TABLE_8_OHM_PER_KFT } from './tables/nec-ch9-table8.ts';

/** Feet in 1000 ft, in metres: 1 ft = 0.3048 m, exact (NIST SP 811 Appendix B.8). */
const M_PER_KFT = 304.8;
const NEC_TABLE_DEG_C = 75;

export interface PrintedCable {
  /** Size as printed on the lead: a nominal metric one, or an AWG size as in tables/awg.ts. */
  size: { nominalMm2: number } | { awg: string };
  tinned: boolean;
  lengthMm: number;
  tempDegC: number;
}

/**
 * Resistance of a stranded copper lead of a printed size, from the published table of that size.
 *
 * Shape   null when no table lists the size; conductor-resistance.ts then gives the solid figure.
 * Units   mm, °C in; mΩ out.
 * Error   IEC 60228 states the greatest a lead may have, 10 to 20 % above its nominal copper; NEC Table 8 the usual.
 * Throws  RangeError if the length is not positive or the temperature is outside −40 … 250 °C.
 * Source  IEC 60228:2004 Table 3 (class 5) and its 0.004 per K; NEC Chapter 9 Table 8 and IACS α from its 75 °C
 * Check   tests/calc/cable-resistance.test.ts
 */
export function cableResistanceMohm({ size, tinned, lengthMm, tempDegC }: PrintedCable): number | null {
  requirePositive('cableResistanceMohm: lengthMm', lengthMm);
  requireConductorTempDegC('cableResistanceMohm: tempDegC', tempDegC);
  const lengthM = lengthMm / 1000;
  if ('nominalMm2' in size) {
    const row = IEC60228_OHM_PER_KM.find(({ sizeMm2 }) => sizeMm2 === size.nominalMm2);
    if (row === undefined) return null;
    // Ω/km is mΩ/m.
    return ((tinned ? row.class5Tinned : row.class5Plain) * lengthM) / iec60228FactorTo20DegC(tempDegC);
  }
  const row = NEC_TABLE_8_OHM_PER_KFT.find(({ size: awg, strands }) => awg === size.awg && strands > 1);
  if (row === undefined) return null;
  const mohmPerM = ((tinned ? row.coated : row.bare) * 1000) / M_PER_KFT;
  return (mohmPerM * lengthM * copperFactor(tempDegC)) / copperFactor(NEC_TABLE_DEG_C);
}

function copperFactor(tempDegC: number): number {
  return 1 + CONDUCTOR_MATERIALS.copper.alphaPerK * (tempDegC - 20);
}
