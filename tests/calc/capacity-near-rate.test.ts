import { expect, it } from 'vitest';
import { capacityNearRateAh, type RunDelivery } from '../../src/calc/capacity-near-rate.ts';

const run = (currentA: number, chargeAh: number, energyWh: number | null = null): RunDelivery =>
  Object.freeze({ currentA, chargeAh, energyWh });

it('takes the mean of 2 runs about 20 A and leaves the 50 A one of a 100 Ah pack: 101 Ah, 1290 Wh (by hand)', () => {
  const runs = Object.freeze([run(50, 95, 1200), run(20, 100, 1280), run(21, 102, 1300)]);
  expect(capacityNearRateAh(runs, { ratedCapacityAh: 100 })).toEqual({
    currentA: 20.5,
    chargeAh: 101,
    energyWh: 1290,
    count: 2,
  });
});

it('counts a run 10 % off the nearest one (22 A), not one further off (22.1 A)', () => {
  const counted = (currentA: number) =>
    capacityNearRateAh([run(20, 100), run(currentA, 90)], { ratedCapacityAh: 100 })?.count;
  expect(counted(22)).toBe(2);
  expect(counted(22.1)).toBe(1);
});

it('measures the 10 % from the run nearest 0.2C, not from 0.2C: 26 and 28 A of 100 Ah are one rate, mean 27 A', () => {
  const runs = [run(28, 98), run(26, 100)];
  expect(capacityNearRateAh(runs, { ratedCapacityAh: 100 })).toMatchObject({ currentA: 27, chargeAh: 99, count: 2 });
});

it('goes by another rate when asked: 50 A for 0.5 per hour', () => {
  const runs = [run(20, 100), run(50, 95)];
  expect(capacityNearRateAh(runs, { ratedCapacityAh: 100, ratePerH: 0.5 })).toMatchObject({ chargeAh: 95, count: 1 });
});

it('prefers the gentler of two currents equally near (15 A to 25 A), in either order', () => {
  for (const runs of [
    [run(15, 101), run(25, 99)],
    [run(25, 99), run(15, 101)],
  ]) {
    expect(capacityNearRateAh(runs, { ratedCapacityAh: 100 })?.chargeAh).toBe(101);
  }
});

it('takes energy from the runs that have it: 1280 Wh of one of two, null of none', () => {
  const options = { ratedCapacityAh: 100 };
  expect(capacityNearRateAh([run(20, 100, 1280), run(20, 102)], options)).toEqual({
    currentA: 20,
    chargeAh: 101,
    energyWh: 1280,
    count: 2,
  });
  expect(capacityNearRateAh([run(20, 100), run(20, 102)], options)?.energyWh).toBeNull();
});

it('knows no capacity without a complete run', () => {
  expect(capacityNearRateAh([], { ratedCapacityAh: 100 })).toBeNull();
});

it.each<[string, RunDelivery, { ratedCapacityAh: number; ratePerH?: number }]>([
  ['ratedCapacityAh must be positive, got 0', run(20, 100), { ratedCapacityAh: 0 }],
  ['ratePerH must be positive, got -0.2', run(20, 100), { ratedCapacityAh: 100, ratePerH: -0.2 }],
  ['currentA must be positive, got -20', run(-20, 100), { ratedCapacityAh: 100 }],
  ['chargeAh must be positive, got NaN', run(20, Number.NaN), { ratedCapacityAh: 100 }],
  ['energyWh must be positive, got 0', run(20, 100, 0), { ratedCapacityAh: 100 }],
])('refuses bad input: %s', (message, bad, options) => {
  expect(() => capacityNearRateAh([bad], options)).toThrow(new RangeError(`capacityNearRateAh: ${message}`));
});
