import { expect, it } from 'vitest';
import { awgAreaMm2 } from '../../src/calc/awg-area.ts';
import { parallelAllowableCurrentA } from '../../src/calc/parallel-allowable-current.ts';

// Currents: 33 CFR 183.425 Table 5, 105 °C: AWG 4 160 A, AWG 6 120 A; 75 °C: AWG 4 125 A.
const four = Object.freeze({ areaMm2: awgAreaMm2(4), insulationDegC: 105, lengthMm: 300 });
const six = Object.freeze({ ...four, areaMm2: awgAreaMm2(6) });

it('adds two equal leads: 320 A', () => {
  expect(parallelAllowableCurrentA([four, four])).toEqual({ currentA: 320, counted: 'sum' });
});

it.each([
  ['another size', [four, six]],
  ['another size first', [six, four]],
  ['another insulation', [four, { ...four, insulationDegC: 75 }]],
  ['another length', [four, { ...four, lengthMm: 310 }]],
  ['lengths not measured', [{ areaMm2: four.areaMm2, insulationDegC: 105 }, four]],
  ['one of three unlike', [four, four, six]],
])('counts the largest alone, 160 A: %s', (_name, leads) => {
  expect(parallelAllowableCurrentA(leads)).toEqual({ currentA: 160, counted: 'largestAlone' });
});

it('takes 303 mm beside 300 mm as one length, 304 mm not', () => {
  expect(parallelAllowableCurrentA([four, { ...four, lengthMm: 303 }])?.counted).toBe('sum');
  expect(parallelAllowableCurrentA([four, { ...four, lengthMm: 304 }])?.counted).toBe('largestAlone');
});

// √(55/75) of 160 A, twice.
it('lets the warmest place limit equal leads: 274 A with one of them in air of 50 °C', () => {
  const found = parallelAllowableCurrentA([four, { ...four, ambientDegC: 50 }]);
  expect(found?.counted).toBe('sum');
  expect(found?.currentA).toBeCloseTo(2 * 160 * Math.sqrt(55 / 75), 9);
});

it('passes a single lead through: 160 A', () => {
  expect(parallelAllowableCurrentA([four])).toEqual({ currentA: 160, counted: 'one' });
});

it('has nothing to say of no lead, or of leads under AWG 18', () => {
  const thin = { ...four, areaMm2: 0.5 };
  expect(parallelAllowableCurrentA([])).toBeNull();
  expect(parallelAllowableCurrentA([thin])).toBeNull();
  expect(parallelAllowableCurrentA([thin, thin])).toBeNull();
  expect(parallelAllowableCurrentA([thin, four])).toEqual({ currentA: 160, counted: 'largestAlone' });
});

it('refuses a lead without area', () => {
  expect(() => parallelAllowableCurrentA([{ ...four, areaMm2: 0 }])).toThrow(RangeError);
});
