import { describe, expect, it } from 'vitest';
import { riskLevelOf } from '../../../src/calc/tables/risk-matrix.ts';

/**
 * MIL-STD-882E (11 May 2012, Change 1 2023), Table III, written out cell by cell from a copy of it.
 * 3E: one copy prints Low, another Medium. MIL-STD-882D's value table gives 3E = 17, and its band 10–17 is
 * Medium (band limits from memory); the same bands reproduce every other cell (test below). Medium is taken.
 */
const TABLE_III = [
  ['1A', 'high'],
  ['2A', 'high'],
  ['3A', 'serious'],
  ['4A', 'medium'],
  ['1B', 'high'],
  ['2B', 'high'],
  ['3B', 'serious'],
  ['4B', 'medium'],
  ['1C', 'high'],
  ['2C', 'serious'],
  ['3C', 'medium'],
  ['4C', 'low'],
  ['1D', 'serious'],
  ['2D', 'medium'],
  ['3D', 'medium'],
  ['4D', 'low'],
  ['1E', 'medium'],
  ['2E', 'medium'],
  ['3E', 'medium'],
  ['4E', 'low'],
] as const;

/** MIL-STD-882D value table as printed in "Serious Incident Prevention", p. 80, Table 7-3; columns 1 to 4. */
const VALUES_882D = { A: [1, 3, 7, 13], B: [2, 5, 9, 16], C: [4, 6, 11, 18], D: [8, 10, 14, 19], E: [12, 15, 17, 20] };

const SEVERITIES = [1, 2, 3, 4] as const;
const LIKELIHOODS = ['A', 'B', 'C', 'D', 'E'] as const;

describe('risk matrix', () => {
  it.each(TABLE_III)('reads %s as %s', (code, level) => {
    const severity = SEVERITIES.find((category) => String(category) === code[0]);
    const likelihood = LIKELIHOODS.find((letter) => letter === code[1]);
    if (severity === undefined || likelihood === undefined) throw new Error(`no such cell: ${code}`);
    expect(riskLevelOf(severity, likelihood)).toBe(level);
  });

  it('agrees in all 20 cells with the 882D values and bands 1–5, 6–9, 10–17, 18–20 (bands from memory)', () => {
    const band = (value: number) => (value <= 5 ? 'high' : value <= 9 ? 'serious' : value <= 17 ? 'medium' : 'low');
    const cells = LIKELIHOODS.flatMap((letter) =>
      SEVERITIES.map((severity) => [riskLevelOf(severity, letter), band(VALUES_882D[letter][severity - 1] ?? 0)]),
    );
    expect(cells).toHaveLength(20);
    expect(cells.filter(([read, banded]) => read !== banded)).toEqual([]);
  });

  it('never falls as a likelihood or a severity worsens', () => {
    const rank = { low: 0, medium: 1, serious: 2, high: 3 };
    for (const severity of SEVERITIES) {
      const column = LIKELIHOODS.map((letter) => rank[riskLevelOf(severity, letter)]);
      expect(column).toEqual(column.toSorted((one, other) => other - one));
    }
    for (const letter of LIKELIHOODS) {
      const row = SEVERITIES.map((severity) => rank[riskLevelOf(severity, letter)]);
      expect(row).toEqual(row.toSorted((one, other) => other - one));
    }
  });
});
