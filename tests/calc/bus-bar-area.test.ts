import { expect, it } from 'vitest';
import { busBarAreaMm2 } from '../../src/calc/bus-bar-area.ts';
import { conductorResistanceMohm } from '../../src/calc/conductor-resistance.ts';

// Closed form; copper ρ = 0.017241 Ω·mm²/m (IACS).
it('makes 80 mm of 20 × 3 mm copper 60 mm² and 22.988 µΩ', () => {
  const areaMm2 = busBarAreaMm2({ widthMm: 20, thicknessMm: 3 });
  expect(areaMm2).toBe(60);
  expect(conductorResistanceMohm({ metal: 'copper', areaMm2, lengthMm: 80 }) * 1000).toBeCloseTo(22.988, 9);
});

it('gives two layers of 20 × 2 mm 80 mm², where one has 40', () => {
  const bar = { widthMm: 20, thicknessMm: 2 };
  expect(busBarAreaMm2({ ...bar, layers: 2 })).toBe(80);
  expect(busBarAreaMm2(bar)).toBe(40);
});

// 34.8 m/(Ω·mm²), Industrial Power Engineering Handbook: 60 mm / (34.8 · 40 mm²).
it('makes 60 mm of 20 × 2 mm aluminium 1350 43.1 µΩ', () => {
  const areaMm2 = busBarAreaMm2({ widthMm: 20, thicknessMm: 2 });
  const microohm = conductorResistanceMohm({ metal: 'aluminium1350', areaMm2, lengthMm: 60 }) * 1000;
  expect(microohm).toBeCloseTo((60 / (34.8 * 40)) * 1000, 2);
});

it.each([
  ['no width', { widthMm: 0 }],
  ['two negative sides', { widthMm: -20, thicknessMm: -3 }],
  ['no layer', { layers: 0 }],
  ['half a layer', { layers: 1.5 }],
])('refuses bad input: %s', (_name, bad) => {
  expect(() => busBarAreaMm2({ widthMm: 20, thicknessMm: 3, ...bad })).toThrow(RangeError);
});
