import { expect, it } from 'vitest';
import { awgGauge } from '../../../src/calc/tables/awg.ts';
import { TABLE5_BUNDLE_FACTORS, TABLE5_CURRENT_A } from '../../../src/calc/tables/cfr33-183-425-table5.ts';
import fixture from '../../fixtures/cfr33-183-425-table5.json' with { type: 'json' };

it('holds the 15 × 7 figures of 33 CFR 183.425 Table 5', () => {
  const printed = fixture.rows.map(({ size, amps }) => ({ size, gauge: awgGauge(size), currentA: amps }));
  expect(TABLE5_CURRENT_A).toEqual(printed);
  expect(TABLE5_CURRENT_A).toHaveLength(15);
});

it('never allows less for a thicker lead or better insulation', () => {
  const columns = ['60', '75', '80', '90', '105', '125', '200'] as const;
  const rows = TABLE5_CURRENT_A.map((row) => columns.map((degC) => row.currentA[Number(degC) as 60]));
  for (const row of rows) expect(row).toEqual(row.toSorted((a, b) => a - b));
  for (const index of columns.keys()) {
    const column = rows.map((row) => row[index] ?? 0);
    expect(column).toEqual(column.toSorted((a, b) => a - b));
  }
});

it('holds the four bundle factors of note 2: 0.70, 0.60, 0.50, 0.40', () => {
  const printed = fixture.bundles.map(({ conductors, factor }) => [conductors[0], factor]);
  expect(
    TABLE5_BUNDLE_FACTORS.filter(({ factor }) => factor < 1).map((row) => [row.fromConductors, row.factor]),
  ).toEqual(printed.toReversed());
});
