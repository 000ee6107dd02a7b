import { expect, it } from 'vitest';
import { NEC_TABLE_8_OHM_PER_KFT } from '../../../src/calc/tables/nec-ch9-table8.ts';
import fixture from '../../fixtures/nec-ch9-table8.json' with { type: 'json' };

it('holds the 21 rows of NEC Chapter 9 Table 8, AWG 18 to 4/0', () => {
  expect(
    NEC_TABLE_8_OHM_PER_KFT.map(({ size, strands, bare, coated }) => ({ size, solid: strands === 1, bare, coated })),
  ).toEqual(fixture.rows.map(({ size, solid, bare, coated }) => ({ size, solid, bare, coated })));
});

it('has the lay of the strands cost 1 to 3 %, and tin 2 to 7 %', () => {
  for (const row of NEC_TABLE_8_OHM_PER_KFT) {
    expect(row.coated / row.bare).toBeGreaterThan(1.02);
    expect(row.coated / row.bare).toBeLessThan(1.07);
    const solid = NEC_TABLE_8_OHM_PER_KFT.find(({ size, strands }) => size === row.size && strands === 1);
    if (solid === undefined || row.strands === 1) continue;
    expect(row.bare / solid.bare).toBeGreaterThan(1.01);
    expect(row.bare / solid.bare).toBeLessThan(1.03);
  }
});
