import { describe, expect, it } from 'vitest';
import { cableResistanceMohm } from '../../src/calc/cable-resistance.ts';
import { conductorResistanceMohm } from '../../src/calc/conductor-resistance.ts';
import iec from '../fixtures/iec60228-max-resistance.json' with { type: 'json' };
import nec from '../fixtures/nec-ch9-table8.json' with { type: 'json' };

// IEC 60228:2004 Table 3.
it.each(iec.rows.map((row) => [row.sizeMm2, row.class5PlainOhmPerKm, row.class5TinnedOhmPerKm] as const))(
  'gives 1 km of %d mm² at 20 °C %d Ω bare, %d Ω tinned',
  (nominalMm2, plain, tinned) => {
    const lead = { size: { nominalMm2 }, lengthMm: 1e6, tempDegC: 20 };
    expect(cableResistanceMohm({ ...lead, tinned: false })).toBeCloseTo(plain * 1000, 6);
    expect(cableResistanceMohm({ ...lead, tinned: true })).toBeCloseTo(tinned * 1000, 6);
  },
);

// NEC Chapter 9 Table 8, stranded rows.
it.each(nec.rows.filter((row) => !row.solid).map((row) => [row.size, row.bare, row.coated] as const))(
  'gives 1000 ft of stranded AWG %s at 75 °C %d Ω bare, %d Ω tinned',
  (awg, bare, coated) => {
    const lead = { size: { awg }, lengthMm: 304_800, tempDegC: 75 };
    expect(cableResistanceMohm({ ...lead, tinned: false })).toBeCloseTo(bare * 1000, 6);
    expect(cableResistanceMohm({ ...lead, tinned: true })).toBeCloseTo(coated * 1000, 6);
  },
);

describe('other temperatures', () => {
  it('makes 25 mm² 20 % higher at 70 °C than at 20 °C: 250/(230 + 70) (IEC 60228)', () => {
    const lead = { size: { nominalMm2: 25 }, tinned: false, lengthMm: 1000 };
    expect(cableResistanceMohm({ ...lead, tempDegC: 70 })).toBeCloseTo(0.78 * 1.2, 9);
  });

  // IACS: (1 + 0.00393·0)/(1 + 0.00393·55).
  it('makes AWG 4 17.8 % lower at 20 °C than at 75 °C', () => {
    const lead = { size: { awg: '4' }, tinned: false, lengthMm: 304_800 };
    expect(cableResistanceMohm({ ...lead, tempDegC: 20 })).toBeCloseTo(308 / 1.21615, 9);
  });
});

it('is 10 to 20 % above solid copper of the nominal area in every class 5 size', () => {
  for (const { sizeMm2 } of iec.rows) {
    const solid = conductorResistanceMohm({ metal: 'copper', areaMm2: sizeMm2, lengthMm: 1000 });
    for (const tinned of [false, true]) {
      const cable = cableResistanceMohm({ size: { nominalMm2: sizeMm2 }, tinned, lengthMm: 1000, tempDegC: 20 });
      expect((cable ?? 0) / solid).toBeGreaterThan(1.1);
      expect((cable ?? 0) / solid).toBeLessThan(1.2);
    }
  }
});

it('has nothing to say of a size no table lists', () => {
  expect(cableResistanceMohm({ size: { nominalMm2: 22 }, tinned: false, lengthMm: 1, tempDegC: 20 })).toBeNull();
  expect(cableResistanceMohm({ size: { awg: '5' }, tinned: false, lengthMm: 1, tempDegC: 20 })).toBeNull();
});

it.each([
  ['no length', { lengthMm: 0 }],
  ['300 °C', { tempDegC: 300 }],
])('refuses bad input: %s', (_name, bad) => {
  const lead = { size: { nominalMm2: 25 }, tinned: false, lengthMm: 1, tempDegC: 20, ...bad };
  expect(() => cableResistanceMohm(lead)).toThrow(RangeError);
});
