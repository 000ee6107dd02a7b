export type RiskMatrixSeverity = 1 | 2 | 3 | 4;
export type RiskMatrixLikelihood = 'A' | 'B' | 'C' | 'D' | 'E';
export type RiskMatrixLevel = 'high' | 'serious' | 'medium' | 'low';

/**
 * Rows: probability A frequent … E improbable. Columns: severity 1 catastrophic … 4 negligible.
 *
 * Cell 3E is printed Low in one copy and Medium in another. The value table of MIL-STD-882D gives 3E = 17,
 * inside its band 10–17, Medium, and those bands reproduce every other cell here: Medium is taken.
 * Row F (eliminated) is left out: no grade leads to it.
 */
const ROWS: Readonly<Record<RiskMatrixLikelihood, Readonly<Record<RiskMatrixSeverity, RiskMatrixLevel>>>> = {
  A: { 1: 'high', 2: 'high', 3: 'serious', 4: 'medium' },
  B: { 1: 'high', 2: 'high', 3: 'serious', 4: 'medium' },
  C: { 1: 'high', 2: 'serious', 3: 'medium', 4: 'low' },
  D: { 1: 'serious', 2: 'medium', 3: 'medium', 4: 'low' },
  E: { 1: 'medium', 2: 'medium', 3: 'medium', 4: 'low' },
};

/**
 * Risk level of a severity category and a probability level.
 *
 * Source  MIL-STD-882E (11 May 2012, Change 1 2023), Table III, read in two copies
 * Check   tests/calc/tables/risk-matrix.test.ts
 */
export function riskLevelOf(severity: RiskMatrixSeverity, likelihood: RiskMatrixLikelihood): RiskMatrixLevel {
  return ROWS[likelihood][severity];
}
