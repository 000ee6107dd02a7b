import { describe, expect, it } from 'vitest';
import { awgAreaMm2 } from '../../src/calc/awg-area.ts';
import { conductorResistanceMohm } from '../../src/calc/conductor-resistance.ts';
import awg from '../fixtures/awg-copper-solid.json' with { type: 'json' };
import nec from '../fixtures/nec-ch9-table8.json' with { type: 'json' };

const copperMohm = (gauge: number, lengthMm: number, tempDegC: number) =>
  conductorResistanceMohm({ metal: 'copper', areaMm2: awgAreaMm2(gauge), lengthMm, tempDegC });

// Public AWG tables at 20 °C, named in the fixture: four figures (one of them 0.03 % off), and three figures.
describe('copper at 20 °C', () => {
  it.each(awg.rows.map((row) => [row.size, row.ohmPerKft20C, row] as const))(
    'AWG %s has %d Ω per 1000 ft, to 0.1 %% or the last figure',
    (_size, ohmPerKft, row) => {
      const ohm = copperMohm(row.gauge, 304_800, 20) / 1000;
      expect(Math.abs(ohm - ohmPerKft)).toBeLessThanOrEqual(Math.max(0.001 * ohmPerKft, 0.00005));
      if (row.ohmPerKm20C !== null) {
        expect(Math.abs(copperMohm(row.gauge, 1e6, 20) / 1000 / row.ohmPerKm20C - 1)).toBeLessThan(6e-4);
      }
      if (row.ohmPerKmSecond !== null) {
        expect(Math.abs(copperMohm(row.gauge, 1e6, 20) / 1000 / row.ohmPerKmSecond - 1)).toBeLessThan(0.002);
      }
    },
  );
});

// NEC Chapter 9 Table 8.
describe('copper at 75 °C', () => {
  const solid = nec.rows.filter((row) => row.solid);
  it.each(solid.map((row) => [row.size, row.bare] as const))(
    'solid AWG %s has %d Ω per 1000 ft, to 0.6 %%',
    (size, bare) => {
      expect(Math.abs(copperMohm(Number(size), 304_800, 75) / 1000 / bare - 1)).toBeLessThan(0.006);
    },
  );
});

it('makes 300 mm of 25 mm² copper 0.2069 mΩ at 20 °C and 0.2476 mΩ at 70 °C (closed form)', () => {
  const lead = Object.freeze({ metal: 'copper', areaMm2: 25, lengthMm: 300 } as const);
  expect(conductorResistanceMohm(lead)).toBeCloseTo(0.206892, 9);
  expect(conductorResistanceMohm({ ...lead, tempDegC: 70 })).toBeCloseTo(0.206892 * 1.1965, 9);
});

// Published ρ of 61 % IACS: 1.724/0.61 = 2.826.
it('makes aluminium 1.639 times copper, as 61 % IACS says', () => {
  const size = { areaMm2: 10, lengthMm: 1000 };
  const ratio =
    conductorResistanceMohm({ metal: 'aluminium', ...size }) / conductorResistanceMohm({ metal: 'copper', ...size });
  expect(ratio).toBeCloseTo(1 / 0.61, 3);
});

it.each([
  ['no area', { areaMm2: 0 }],
  ['a negative length', { lengthMm: -1 }],
  ['an area that is not a number', { areaMm2: Number.NaN }],
  ['−41 °C', { tempDegC: -41 }],
  ['251 °C', { tempDegC: 251 }],
  ['a temperature that is not a number', { tempDegC: Number.NaN }],
])('refuses bad input: %s', (_name, bad) => {
  expect(() => conductorResistanceMohm({ metal: 'copper', areaMm2: 10, lengthMm: 100, ...bad })).toThrow(RangeError);
});
