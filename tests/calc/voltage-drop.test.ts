import { describe, expect, it } from 'vitest';
import { conductorResistanceMohm } from '../../src/calc/conductor-resistance.ts';
import { conductorHeatW, voltageDropMv } from '../../src/calc/voltage-drop.ts';
import fixture from '../fixtures/voltage-drop-examples.json' with { type: 'json' };

// Marine catalogue formula, named in the fixture. Its K is that of copper somewhat above 20 °C (10.371).
describe('examples of marine catalogues', () => {
  it.each(fixture.rows.map((row) => [row.currentA, row.roundTripFt, row.circularMils, row] as const))(
    '%d A over %d ft of %d circular mils drops what is printed, times 10.371/K at 20 °C',
    (currentA, roundTripFt, circularMils, row) => {
      const resistanceMohm = conductorResistanceMohm({
        metal: 'copper',
        areaMm2: circularMils * (Math.PI / 4) * 0.0254 ** 2,
        lengthMm: roundTripFt * 304.8,
      });
      const dropV = voltageDropMv({ resistanceMohm, currentA }) / 1000;
      expect(dropV / ((row.dropV * 10.371) / row.k)).toBeCloseTo(1, 4);
    },
  );
});

it('makes 1.5 mΩ at 100 A 150 mV and 15 W (Ohm, Joule)', () => {
  const loaded = Object.freeze({ resistanceMohm: 1.5, currentA: 100 });
  expect(voltageDropMv(loaded)).toBe(150);
  expect(conductorHeatW(loaded)).toBeCloseTo(15, 12);
});

it.each([
  [0, 100],
  [1, 0],
  [-1, 100],
  [1, Number.NaN],
])('refuses %s mΩ at %s A', (resistanceMohm, currentA) => {
  expect(() => voltageDropMv({ resistanceMohm, currentA })).toThrow(RangeError);
  expect(() => conductorHeatW({ resistanceMohm, currentA })).toThrow(RangeError);
});
