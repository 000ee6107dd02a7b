import { expect, it } from 'vitest';
import { awgAreaMm2 } from '../../src/calc/awg-area.ts';
import { parallelAllowableCurrentA } from '../../src/calc/parallel-allowable-current.ts';

// 33 CFR 183.425 Table 5, 105 °C: AWG 4 160 A.
const four = Object.freeze({ areaMm2: awgAreaMm2(4), insulationDegC: 105 });

it('adds 2 equal conductors of AWG 4: 320 A', () => {
  expect(parallelAllowableCurrentA({ ...four, count: 2, equal: true })).toBe(320);
});

it('counts one alone, 160 A, of 3 that are not equal or not known to be, and of a single one', () => {
  expect(parallelAllowableCurrentA({ ...four, count: 3, equal: false })).toBe(160);
  expect(parallelAllowableCurrentA({ ...four, count: 3 })).toBe(160);
  expect(parallelAllowableCurrentA(four)).toBe(160);
});

// √(55/75) of 160 A, twice.
it('allows 2 equal ones in air of 50 °C 274 A', () => {
  const warm = parallelAllowableCurrentA({ ...four, ambientDegC: 50, count: 2, equal: true });
  expect(warm).toBeCloseTo(2 * 160 * Math.sqrt(55 / 75), 9);
});

it('has nothing to say of conductors under AWG 18, however many', () => {
  expect(parallelAllowableCurrentA({ ...four, areaMm2: 0.5, count: 40, equal: true })).toBeNull();
});

it('refuses no area and half a conductor', () => {
  expect(() => parallelAllowableCurrentA({ ...four, areaMm2: 0 })).toThrow('allowableCurrentA: areaMm2');
  expect(() => parallelAllowableCurrentA({ ...four, count: 0.5 })).toThrow('leadSharing: count');
});
