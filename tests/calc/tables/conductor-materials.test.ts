import { expect, it } from 'vitest';
import { CONDUCTOR_MATERIALS, type ConductorMetal } from '../../../src/calc/tables/conductor-materials.ts';
import fixture from '../../fixtures/conductor-materials.json' with { type: 'json' };

// Only rows that were read; nickel was read in part and is no oracle.
const read = fixture.rows.filter((row) => row.status === 'read');

it.each(read.map((row) => [row.metal, row.rho20, row] as const))('%s has %d Ω·mm²/m at 20 °C', (metal, rho20, row) => {
  const material = CONDUCTOR_MATERIALS[metal as ConductorMetal];
  expect(material.ohmMm2PerM).toBe(rho20);
  expect(material.status).toBe('read');
  if (row.alpha20 !== null) expect(material.alphaPerK).toBe(row.alpha20);
  // The same row's conductivity, and β = 1/α − 20 within the rounding of α.
  if (row.siemensMPerMm2 !== null) expect(material.ohmMm2PerM * row.siemensMPerMm2).toBeCloseTo(1, 3);
  if (row.beta !== null) expect(Math.abs(1 / material.alphaPerK - 20 - row.beta)).toBeLessThan(0.2);
});

it('marks nickel, and only nickel, as read in part', () => {
  const partly = Object.entries(CONDUCTOR_MATERIALS).filter(([, { status }]) => status === 'partly');
  expect(partly.map(([metal]) => metal)).toEqual(['nickel']);
  expect(Object.keys(CONDUCTOR_MATERIALS).toSorted()).toEqual(fixture.rows.map(({ metal }) => metal).toSorted());
});
