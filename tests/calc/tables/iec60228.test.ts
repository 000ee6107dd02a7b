import { expect, it } from 'vitest';
import { IEC60228_OHM_PER_KM, iec60228FactorTo20DegC } from '../../../src/calc/tables/iec60228.ts';
import fixture from '../../fixtures/iec60228-max-resistance.json' with { type: 'json' };

it('holds the 18 sizes of IEC 60228:2004 Tables 2 and 3, 0.5 to 240 mm²', () => {
  expect(IEC60228_OHM_PER_KM).toEqual(
    fixture.rows.map((row) => ({
      sizeMm2: row.sizeMm2,
      class5Plain: row.class5PlainOhmPerKm,
      class5Tinned: row.class5TinnedOhmPerKm,
      class2Plain: row.class2PlainOhmPerKm,
      class2Tinned: row.class2TinnedOhmPerKm,
    })),
  );
});

it('falls from size to size, tinned above plain', () => {
  for (const key of ['class5Plain', 'class5Tinned', 'class2Plain', 'class2Tinned'] as const) {
    const column = IEC60228_OHM_PER_KM.map((row) => row[key]);
    expect(column).toEqual(column.toSorted((a, b) => b - a));
  }
  for (const row of IEC60228_OHM_PER_KM) expect(row.class5Tinned).toBeGreaterThan(row.class5Plain);
});

// As a cable maker prints it; 15 °C and 75 °C stand there with two figures.
it.each(fixture.factorTo20C as [number, number][])('at %d °C has the printed factor %d', (tempDegC, factor) => {
  expect(Math.abs(iec60228FactorTo20DegC(tempDegC) - factor)).toBeLessThanOrEqual(0.0005 + 1e-12);
});
