/**
 * Direct-current resistance of copper conductors at 75 °C: Ω per 1000 ft, bare and coated (tinned), solid and stranded.
 *
 * Source  NFPA 70 (NEC) Chapter 9 Table 8, read in two public copies; one of them heads the solid figures of
 *         AWG 14 to 8 as stranded, so the other's are taken
 * Check   tests/calc/tables/nec-ch9-table8.test.ts
 */
export const NEC_TABLE_8_OHM_PER_KFT = [
  { size: '18', strands: 1, bare: 7.77, coated: 8.08 },
  { size: '18', strands: 7, bare: 7.95, coated: 8.45 },
  { size: '16', strands: 1, bare: 4.89, coated: 5.08 },
  { size: '16', strands: 7, bare: 4.99, coated: 5.29 },
  { size: '14', strands: 1, bare: 3.07, coated: 3.19 },
  { size: '14', strands: 7, bare: 3.14, coated: 3.26 },
  { size: '12', strands: 1, bare: 1.93, coated: 2.01 },
  { size: '12', strands: 7, bare: 1.98, coated: 2.05 },
  { size: '10', strands: 1, bare: 1.21, coated: 1.26 },
  { size: '10', strands: 7, bare: 1.24, coated: 1.29 },
  { size: '8', strands: 1, bare: 0.764, coated: 0.786 },
  { size: '8', strands: 7, bare: 0.778, coated: 0.809 },
  { size: '6', strands: 7, bare: 0.491, coated: 0.51 },
  { size: '4', strands: 7, bare: 0.308, coated: 0.321 },
  { size: '3', strands: 7, bare: 0.245, coated: 0.254 },
  { size: '2', strands: 7, bare: 0.194, coated: 0.201 },
  { size: '1', strands: 19, bare: 0.154, coated: 0.16 },
  { size: '1/0', strands: 19, bare: 0.122, coated: 0.127 },
  { size: '2/0', strands: 19, bare: 0.0967, coated: 0.101 },
  { size: '3/0', strands: 19, bare: 0.0766, coated: 0.0797 },
  { size: '4/0', strands: 19, bare: 0.0608, coated: 0.0626 },
] as const;
