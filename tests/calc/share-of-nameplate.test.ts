import { expect, it } from 'vitest';
import { chargeShareFrac, energyShareFrac } from '../../src/calc/share-of-nameplate.ts';

it('gives 97.4 % of 300 Ah for 292.2 Ah and 107.5 % for 322.6 Ah (by hand: 292.2 ÷ 3, 322.6 ÷ 3)', () => {
  expect(chargeShareFrac({ chargeAh: 292.2, ratedCapacityAh: 300 })).toBeCloseTo(0.974, 12);
  expect(chargeShareFrac({ chargeAh: 322.6, ratedCapacityAh: 300 })).toBeCloseTo(1.0753333333, 10);
});

// 53.28333… Ah is 3197 ÷ 60, so of 60 Ah it is 3197 ÷ 3600 exactly.
it('gives 3197/3600 of 60 Ah for 53.28333 Ah (closed form)', () => {
  expect(chargeShareFrac({ chargeAh: 3197 / 60, ratedCapacityAh: 60 })).toBeCloseTo(3197 / 3600, 14);
});

it('gives three quarters of 2560 Wh for 1920 Wh (closed form), and nothing for 0 Wh', () => {
  expect(energyShareFrac({ energyWh: 1920, promisedWh: 2560 })).toBe(0.75);
  expect(energyShareFrac({ energyWh: 0, promisedWh: 2560 })).toBe(0);
});

it('refuses a negative delivery and a promise of 0', () => {
  expect(() => chargeShareFrac({ chargeAh: -1, ratedCapacityAh: 60 })).toThrow('chargeAh must be 0 or more, got -1');
  expect(() => chargeShareFrac({ chargeAh: 1, ratedCapacityAh: 0 })).toThrow('ratedCapacityAh must be positive, got 0');
  expect(() => energyShareFrac({ energyWh: -1, promisedWh: 60 })).toThrow('energyWh must be 0 or more, got -1');
  expect(() => energyShareFrac({ energyWh: 1, promisedWh: 0 })).toThrow('promisedWh must be positive, got 0');
});
