import type { AwgSize } from './awg.ts';

/** Insulation temperature ratings that head the columns of the table, in °C. */
export const TABLE5_INSULATION_DEG_C = [60, 75, 80, 90, 105, 125, 200] as const;
export type Table5InsulationDegC = (typeof TABLE5_INSULATION_DEG_C)[number];

/** Ambient air the table holds for, in °C. */
export const TABLE5_AMBIENT_DEG_C = 30;

/**
 * Allowable current of insulated stranded copper conductors, in A, thinnest first.
 * Written for boats; wiring inside an equipment housing is exempt, so inside a pack it is an analogy.
 *
 * Source  33 CFR 183.425 Table 5: all 15 × 7 figures read in one copy of the regulation, the 105 °C column in four more
 * Check   tests/calc/tables/cfr33-183-425-table5.test.ts
 */
export const TABLE5_CURRENT_A: readonly {
  size: AwgSize;
  gauge: number;
  currentA: Readonly<Record<Table5InsulationDegC, number>>;
}[] = [
  { size: '18', gauge: 18, currentA: { 60: 10, 75: 10, 80: 15, 90: 20, 105: 20, 125: 25, 200: 25 } },
  { size: '16', gauge: 16, currentA: { 60: 15, 75: 15, 80: 20, 90: 25, 105: 25, 125: 30, 200: 35 } },
  { size: '14', gauge: 14, currentA: { 60: 20, 75: 20, 80: 25, 90: 30, 105: 35, 125: 40, 200: 45 } },
  { size: '12', gauge: 12, currentA: { 60: 25, 75: 25, 80: 35, 90: 40, 105: 45, 125: 50, 200: 55 } },
  { size: '10', gauge: 10, currentA: { 60: 40, 75: 40, 80: 50, 90: 55, 105: 60, 125: 70, 200: 70 } },
  { size: '8', gauge: 8, currentA: { 60: 55, 75: 65, 80: 70, 90: 70, 105: 80, 125: 90, 200: 100 } },
  { size: '6', gauge: 6, currentA: { 60: 80, 75: 95, 80: 100, 90: 100, 105: 120, 125: 125, 200: 135 } },
  { size: '4', gauge: 4, currentA: { 60: 105, 75: 125, 80: 130, 90: 135, 105: 160, 125: 170, 200: 180 } },
  { size: '3', gauge: 3, currentA: { 60: 120, 75: 145, 80: 150, 90: 155, 105: 180, 125: 195, 200: 210 } },
  { size: '2', gauge: 2, currentA: { 60: 140, 75: 170, 80: 175, 90: 180, 105: 210, 125: 225, 200: 240 } },
  { size: '1', gauge: 1, currentA: { 60: 165, 75: 195, 80: 210, 90: 210, 105: 245, 125: 265, 200: 280 } },
  { size: '1/0', gauge: 0, currentA: { 60: 195, 75: 230, 80: 245, 90: 245, 105: 285, 125: 305, 200: 325 } },
  { size: '2/0', gauge: -1, currentA: { 60: 225, 75: 265, 80: 285, 90: 285, 105: 330, 125: 355, 200: 370 } },
  { size: '3/0', gauge: -2, currentA: { 60: 260, 75: 310, 80: 330, 90: 330, 105: 385, 125: 410, 200: 430 } },
  { size: '4/0', gauge: -3, currentA: { 60: 300, 75: 360, 80: 385, 90: 385, 105: 445, 125: 475, 200: 510 } },
];

/**
 * Share left to each where several current-carrying conductors lie together in a circuit of 50 V or more; below 50 V
 * the regulation asks for none.
 *
 * Source  33 CFR 183.425 Table 5 note 2, read in two trade reprints
 * Check   tests/calc/tables/cfr33-183-425-table5.test.ts
 */
export const TABLE5_BUNDLE_FACTORS = [
  { fromConductors: 25, factor: 0.4 },
  { fromConductors: 7, factor: 0.5 },
  { fromConductors: 4, factor: 0.6 },
  { fromConductors: 3, factor: 0.7 },
  { fromConductors: 1, factor: 1 },
] as const;
