import { expect, it } from 'vitest';
import { oneWayFrac, roundTripFrac } from '../../src/calc/round-trip.ts';

// batterydesign.net, "Efficiency": 11 Wh in, 10 Wh out, printed 90.9 %; a second page: 100 kWh in, 80 out, 80 %.
it('gives back 90.9 % of 11 Wh as 10 Wh and 80 % of 100 kWh as 80 kWh', () => {
  expect(100 * roundTripFrac({ putIn: 11, tookOut: 10 })).toBeCloseTo(90.9, 1);
  expect(roundTripFrac({ putIn: 100, tookOut: 80 })).toBe(0.8);
});

it('gives back 99.1 % of 99.6 Ah as 98.7 Ah (by hand: 1 − 0.9 ÷ 99.6)', () => {
  expect(roundTripFrac({ putIn: 99.6, tookOut: 98.7 })).toBeCloseTo(1 - 0.9 / 99.6, 14);
});

// Energy modelling manual, storage: round trip 0.8 is 0.894 each way; 100 kWh put in are 89.4 kWh held, 80.0 kWh out.
it('loses to 0.894 each way of a round trip of 0.8: 100 kWh in, 89.4 kWh held, 80.0 kWh out', () => {
  const each = oneWayFrac(0.8);
  expect(each).toBeCloseTo(0.894, 3);
  expect(100 * each).toBeCloseTo(89.4, 1);
  expect(100 * each * each).toBeCloseTo(80, 10);
});

it('refuses nothing put in, a negative outcome and a negative share', () => {
  expect(() => roundTripFrac({ putIn: 0, tookOut: 1 })).toThrow('roundTripFrac: putIn must be positive, got 0');
  expect(() => roundTripFrac({ putIn: 1, tookOut: -1 })).toThrow('roundTripFrac: tookOut must be 0 or more, got -1');
  expect(() => oneWayFrac(-0.1)).toThrow('oneWayFrac: roundTrip must be 0 or more, got -0.1');
});
