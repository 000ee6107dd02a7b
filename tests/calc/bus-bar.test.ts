import { expect, it } from 'vitest';
import { busBar } from '../../src/calc/bus-bar.ts';

// Closed form; copper ρ = 0.017241 Ω·mm²/m (IACS).
it('makes 80 mm of 20 × 3 mm copper 60 mm², 22.988 µΩ, 3.33 A/mm² at 200 A', () => {
  const found = busBar({ metal: 'copper', widthMm: 20, thicknessMm: 3, lengthMm: 80, currentA: 200 });
  expect(found.areaMm2).toBe(60);
  expect(found.resistanceMicroohm).toBeCloseTo(22.988, 9);
  expect(found.currentDensityAPerMm2).toBeCloseTo(200 / 60, 12);
});

it('makes two layers half the resistance and half the density', () => {
  const bar = { metal: 'aluminium1350', widthMm: 20, thicknessMm: 2, lengthMm: 60, currentA: 100 } as const;
  const one = busBar(bar);
  const two = busBar({ ...bar, layers: 2 });
  expect(two.resistanceMicroohm).toBeCloseTo(one.resistanceMicroohm / 2, 12);
  expect(two.currentDensityAPerMm2).toBe(1.25);
});

// 34.8 m/(Ω·mm²), Industrial Power Engineering Handbook: 60 mm / (34.8 · 40 mm²).
it('makes 60 mm of 20 × 2 mm aluminium 1350 43.1 µΩ', () => {
  const { resistanceMicroohm } = busBar({ metal: 'aluminium1350', widthMm: 20, thicknessMm: 2, lengthMm: 60 });
  expect(resistanceMicroohm).toBeCloseTo((60 / (34.8 * 40)) * 1000, 2);
});

it('raises copper by 23.6 % at 80 °C and gives no density without a current', () => {
  const bar = { metal: 'copper', widthMm: 10, thicknessMm: 1, lengthMm: 100 } as const;
  const warm = busBar({ ...bar, tempDegC: 80 });
  expect(warm.resistanceMicroohm / busBar(bar).resistanceMicroohm).toBeCloseTo(1.2358, 9);
  expect(warm.currentDensityAPerMm2).toBeNull();
});

it.each([
  ['no width', { widthMm: 0 }],
  ['two negative sides', { widthMm: -20, thicknessMm: -3 }],
  ['no length', { lengthMm: 0 }],
  ['no layer', { layers: 0 }],
  ['half a layer', { layers: 1.5 }],
  ['no current', { currentA: 0 }],
  ['too hot', { tempDegC: 400 }],
])('refuses bad input: %s', (_name, bad) => {
  const bar = { metal: 'copper', widthMm: 20, thicknessMm: 3, lengthMm: 80, ...bad } as const;
  expect(() => busBar(bar)).toThrow(RangeError);
});
