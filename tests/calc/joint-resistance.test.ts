import { expect, it } from 'vitest';
import { jointResistanceMicroohm } from '../../src/calc/joint-resistance.ts';

it('makes 2.5 mV at 100 A 25 µΩ (closed form)', () => {
  expect(jointResistanceMicroohm({ dropMv: 2.5, currentA: 100 })).toBe(25);
});

it('lets a meter read 0 mV', () => {
  expect(jointResistanceMicroohm({ dropMv: 0, currentA: 100 })).toBe(0);
});

it.each([
  ['no current', { currentA: 0 }],
  ['a drop the wrong way', { dropMv: -1 }],
  ['a drop that is not a number', { dropMv: Number.NaN }],
])('refuses bad input: %s', (_name, bad) => {
  expect(() => jointResistanceMicroohm({ dropMv: 2.5, currentA: 100, ...bad })).toThrow(RangeError);
});
