import { expect, it } from 'vitest';
import { rectangularUncertainty } from '../../src/calc/rectangular-uncertainty.ts';

// GUM H.1 as coded in MSLNZ/GTC (docs/API/GUM_H1.rst): gauge block of 50 000 623 nm.
it('moves the gauge block of GUM H.1 by 16.599 nm for ± 0.05 °C and by 2.88679 nm for ± 1e-6 /°C at −0.1 °C', () => {
  const lengthNm = 50_000_623;
  expect(lengthNm * 11.5e-6 * rectangularUncertainty(0.05)).toBeCloseTo(16.599, 3);
  expect(lengthNm * 0.1 * rectangularUncertainty(1e-6)).toBeCloseTo(2.88679, 5);
});

// Printed micrometer budget (talalspecialbolt, micrometer page): resolution 0.001 mm, ± half a step.
it('gives 0.00029 mm for a micrometer that shows 0.001 mm', () => {
  expect(rectangularUncertainty(0.001 / 2)).toBeCloseTo(0.00029, 5);
});

it('gives 0 for a half-width of 0 and refuses −1 and NaN', () => {
  expect(rectangularUncertainty(0)).toBe(0);
  expect(() => rectangularUncertainty(-1)).toThrow(
    new RangeError('rectangularUncertainty: halfWidth must be 0 or more, got -1'),
  );
  expect(() => rectangularUncertainty(Number.NaN)).toThrow(RangeError);
});
