/**
 * Greatest resistance a stranded copper conductor may have: Ω/km at 20 °C, by nominal size.
 * Class 5 is the fine-stranded lead of a pack, class 2 the coarse one. A size as printed, not a measured area.
 *
 * Source  IEC 60228:2004 Tables 2 and 3, read in three public copies that agree on every row of class 5
 * Check   tests/calc/tables/iec60228.test.ts, tests/calc/cable-resistance.test.ts
 */
export const IEC60228_OHM_PER_KM = [
  { sizeMm2: 0.5, class5Plain: 39.0, class5Tinned: 40.1, class2Plain: 36.0, class2Tinned: 36.7 },
  { sizeMm2: 0.75, class5Plain: 26.0, class5Tinned: 26.7, class2Plain: 24.5, class2Tinned: 24.8 },
  { sizeMm2: 1, class5Plain: 19.5, class5Tinned: 20.0, class2Plain: 18.1, class2Tinned: 18.2 },
  { sizeMm2: 1.5, class5Plain: 13.3, class5Tinned: 13.7, class2Plain: 12.1, class2Tinned: 12.2 },
  { sizeMm2: 2.5, class5Plain: 7.98, class5Tinned: 8.21, class2Plain: 7.41, class2Tinned: 7.56 },
  { sizeMm2: 4, class5Plain: 4.95, class5Tinned: 5.09, class2Plain: 4.61, class2Tinned: 4.7 },
  { sizeMm2: 6, class5Plain: 3.3, class5Tinned: 3.39, class2Plain: 3.08, class2Tinned: 3.11 },
  { sizeMm2: 10, class5Plain: 1.91, class5Tinned: 1.95, class2Plain: 1.83, class2Tinned: 1.84 },
  { sizeMm2: 16, class5Plain: 1.21, class5Tinned: 1.24, class2Plain: 1.15, class2Tinned: 1.16 },
  { sizeMm2: 25, class5Plain: 0.78, class5Tinned: 0.795, class2Plain: 0.727, class2Tinned: 0.734 },
  { sizeMm2: 35, class5Plain: 0.554, class5Tinned: 0.565, class2Plain: 0.524, class2Tinned: 0.529 },
  { sizeMm2: 50, class5Plain: 0.386, class5Tinned: 0.393, class2Plain: 0.387, class2Tinned: 0.391 },
  { sizeMm2: 70, class5Plain: 0.272, class5Tinned: 0.277, class2Plain: 0.268, class2Tinned: 0.27 },
  { sizeMm2: 95, class5Plain: 0.206, class5Tinned: 0.21, class2Plain: 0.193, class2Tinned: 0.195 },
  { sizeMm2: 120, class5Plain: 0.161, class5Tinned: 0.164, class2Plain: 0.153, class2Tinned: 0.154 },
  { sizeMm2: 150, class5Plain: 0.129, class5Tinned: 0.132, class2Plain: 0.124, class2Tinned: 0.126 },
  { sizeMm2: 185, class5Plain: 0.106, class5Tinned: 0.108, class2Plain: 0.0991, class2Tinned: 0.1 },
  { sizeMm2: 240, class5Plain: 0.0801, class5Tinned: 0.0817, class2Plain: 0.0754, class2Tinned: 0.0762 },
] as const;

/**
 * Factor from a resistance at some temperature to that at 20 °C: 250 / (230 + t), which is a coefficient of 0.004 per K.
 *
 * Source  IEC 60228:2004 Annex B as printed by a cable maker, read
 * Check   tests/calc/tables/iec60228.test.ts
 */
export function iec60228FactorTo20DegC(tempDegC: number): number {
  return 250 / (230 + tempDegC);
}
