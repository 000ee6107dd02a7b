import { describe, expect, it } from 'vitest';
import { awgAreaMm2, awgFromAreaMm2 } from '../../src/calc/awg-area.ts';
import { AWG_SIZES, awgGauge } from '../../src/calc/tables/awg.ts';
import fixture from '../fixtures/awg-copper-solid.json' with { type: 'json' };

const MM2_PER_CIRCULAR_MIL = (Math.PI / 4) * 0.0254 ** 2;

// Public AWG tables, named in the fixture.
describe('areas of printed tables', () => {
  it.each(fixture.rows.map((row) => [row.size, row.circularMils, row] as const))(
    'AWG %s has %d circular mils to 0.05 %%, and its mm² to half the third figure',
    (size, circularMils, row) => {
      const areaMm2 = awgAreaMm2(awgGauge(size) ?? Number.NaN);
      expect(Math.abs(areaMm2 / MM2_PER_CIRCULAR_MIL / circularMils - 1)).toBeLessThan(5e-4);
      expect(Math.abs(areaMm2 / row.areaMm2 - 1)).toBeLessThan(0.005);
    },
  );
});

it('makes 4/0 exactly 0.46 in across, as the standard defines it', () => {
  expect(Math.sqrt((4 * awgAreaMm2(-3)) / Math.PI) / 25.4).toBeCloseTo(0.46, 12);
});

it('goes back from the area to the gauge: 33.63 mm² is AWG 2.00, 50 mm² lies between 1 and 1/0', () => {
  expect(awgFromAreaMm2(33.6308)).toBeCloseTo(2, 4);
  expect(awgFromAreaMm2(50)).toBeGreaterThan(0);
  expect(awgFromAreaMm2(50)).toBeLessThan(1);
  for (const { gauge } of AWG_SIZES) expect(awgFromAreaMm2(awgAreaMm2(gauge))).toBeCloseTo(gauge, 10);
});

it.each([
  ['2/0', -1],
  ['00', -1],
  ['0', 0],
  ['0000', -3],
  ['AWG 8', 8],
  ['8AWG', 8],
  ['#10', 10],
  ['18', 18],
  ['0.5', null],
  ['5/0', null],
  ['00000', null],
  ['', null],
  ['25 mm²', null],
])('reads “%s” as gauge %s', (printed, gauge) => {
  expect(awgGauge(printed)).toBe(gauge);
});

it.each([-4, 41, Number.NaN, Number.POSITIVE_INFINITY])('refuses gauge %s', (gauge) => {
  expect(() => awgAreaMm2(gauge)).toThrow(RangeError);
});

it.each([0, -1, Number.NaN])('refuses an area of %s mm²', (areaMm2) => {
  expect(() => awgFromAreaMm2(areaMm2)).toThrow(RangeError);
});
