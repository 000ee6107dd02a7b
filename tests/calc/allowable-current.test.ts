import { describe, expect, it } from 'vitest';
import { allowableCurrentA } from '../../src/calc/allowable-current.ts';
import { awgAreaMm2 } from '../../src/calc/awg-area.ts';
import { awgGauge } from '../../src/calc/tables/awg.ts';
import awg from '../fixtures/awg-copper-solid.json' with { type: 'json' };
import table5 from '../fixtures/cfr33-183-425-table5.json' with { type: 'json' };

const areaOf = (size: string) => awgAreaMm2(awgGauge(size) ?? Number.NaN);

// 33 CFR 183.425 Table 5, all 105 figures.
describe.each(table5.rows.map((row) => [row.size, row] as const))('AWG %s', (size, row) => {
  it.each(Object.entries(row.amps).map(([degC, amps]) => [Number(degC), amps] as const))(
    'with insulation for %d °C carries %d A',
    (insulationDegC, amps) => {
      expect(allowableCurrentA({ areaMm2: areaOf(size), insulationDegC })).toEqual({
        currentA: amps,
        tableAwg: size,
        tableInsulationDegC: insulationDegC,
        tableCurrentA: amps,
        ambientFactor: 1,
        bundleFactor: 1,
      });
    },
  );
});

// Areas as public AWG tables print them, rounded to three figures: 33.6 for 33.63.
it('reads every printed area of a table size as that size', () => {
  for (const { size } of table5.rows) {
    const printed = awg.rows.find((row) => row.size === size)?.areaMm2 ?? Number.NaN;
    expect(allowableCurrentA({ areaMm2: printed, insulationDegC: 105 })?.tableAwg).toBe(size);
  }
});

it('takes the next size down for a metric lead: 50 mm² as AWG 1, 16 mm² as AWG 6, 150 mm² as 4/0', () => {
  const sizes = [50, 16, 150].map((areaMm2) => allowableCurrentA({ areaMm2, insulationDegC: 105 })?.tableAwg);
  expect(sizes).toEqual(['1', '6', '4/0']);
});

it('takes the next column down: 110 °C as 105 °C, 180 °C as 125 °C', () => {
  const columns = [110, 180].map((insulationDegC) => allowableCurrentA({ areaMm2: 35, insulationDegC }));
  expect(columns.map((found) => found?.tableInsulationDegC)).toEqual([105, 125]);
});

it('has nothing to say under AWG 18, and nothing of insulation under 60 °C', () => {
  expect(allowableCurrentA({ areaMm2: 0.82, insulationDegC: 105 })?.tableAwg).toBe('18');
  expect(allowableCurrentA({ areaMm2: 0.8, insulationDegC: 105 })).toBeNull();
  expect(allowableCurrentA({ areaMm2: 35, insulationDegC: 59.9 })).toBeNull();
});

// 33 CFR 183.425 note 1, engine space; the factors that were seen in print.
it.each(Object.entries(table5.engineSpaceFactorsSeen).map(([degC, factor]) => [Number(degC), factor] as const))(
  'in air of 50 °C leaves insulation for %d °C the printed %d, to one hundredth',
  (insulationDegC, factor) => {
    const found = allowableCurrentA({ areaMm2: 35, insulationDegC, ambientDegC: 50 });
    expect(Math.abs((found?.ambientFactor ?? 0) - factor)).toBeLessThan(0.01);
  },
);

it('allows nothing in air as warm as the insulation may get, or warmer', () => {
  for (const ambientDegC of [105, 120]) {
    expect(allowableCurrentA({ areaMm2: 35, insulationDegC: 105, ambientDegC })?.currentA).toBe(0);
  }
});

// 33 CFR 183.425 note 2.
it.each(table5.bundles.flatMap(({ conductors, factor }) => conductors.map((count) => [count, factor] as const)))(
  'leaves each of %d bundled conductors a share of %d',
  (bundledConductors, factor) => {
    const found = allowableCurrentA({ areaMm2: awgAreaMm2(2), insulationDegC: 105, bundledConductors });
    expect(found?.currentA).toBe(210 * factor);
  },
);

it('leaves two bundled conductors all', () => {
  expect(allowableCurrentA({ areaMm2: awgAreaMm2(2), insulationDegC: 105, bundledConductors: 2 })?.currentA).toBe(210);
});

it.each([
  ['no area', { areaMm2: 0 }],
  ['insulation that is not a number', { insulationDegC: Number.NaN }],
  ['air that is not a number', { ambientDegC: Number.NaN }],
  ['no conductor', { bundledConductors: 0 }],
  ['two and a half conductors', { bundledConductors: 2.5 }],
])('refuses bad input: %s', (_name, bad) => {
  expect(() => allowableCurrentA({ areaMm2: 35, insulationDegC: 105, ...bad })).toThrow(RangeError);
});
