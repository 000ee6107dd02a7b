import { expect, it } from 'vitest';
import { inFromMm, mmFromIn } from '../../src/units/length-in.ts';
import { kgFromLb, lbFromKg } from '../../src/units/mass-lb.ts';
import { degCFromDegF, degCFromKelvin, degFFromDegC, kelvinFromDegC } from '../../src/units/temperature.ts';
import { boxVolumeL } from '../../src/units/volume-l.ts';

// NIST SP 811 (2008) Appendix B.8: pound (avoirdupois) 4.535 924 × 10⁻¹ kg, inch 2.54 cm exactly.
it('makes 0.453 592 37 kg of 1 lb and 22.046 lb of 10 kg, as NIST SP 811 says', () => {
  expect(kgFromLb(1)).toBe(0.45359237);
  expect(lbFromKg(10)).toBeCloseTo(22.0462, 4);
});

it('makes 330.2 mm of 13 in and 1 in of 25.4 mm', () => {
  expect(mmFromIn(13)).toBeCloseTo(330.2, 10);
  expect(inFromMm(25.4)).toBe(1);
});

// Fixed points of the scales: −40 is the same in both; water boils at 212 °F.
it('meets at −40, makes 212 °F of 100 °C and 0 °C of 32 °F', () => {
  expect(degFFromDegC(-40)).toBe(-40);
  expect(degFFromDegC(100)).toBe(212);
  expect(degCFromDegF(32)).toBe(0);
});

it('makes 273.15 K of 0 °C and 25 °C of 298.15 K', () => {
  expect(kelvinFromDegC(0)).toBe(273.15);
  expect(degCFromKelvin(298.15)).toBeCloseTo(25, 10);
});

it('makes 1.934 L of a 54 × 173 × 207 mm cell', () => {
  expect(boxVolumeL({ lengthMm: 54, widthMm: 173, heightMm: 207 })).toBeCloseTo(1.934, 3);
});
