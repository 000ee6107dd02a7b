import { expect, it } from 'vitest';
import { faultCurrentA } from '../../src/calc/fault-current.ts';

// A public calculator: 12 V behind 5 mΩ is 2400 A.
it('puts 2400 A through a 12 V source of 5 mΩ', () => {
  expect(faultCurrentA({ cellsInSeries: 1, cellVoltageV: 12, cellDcMohm: 5 })?.currentA).toBe(2400);
});

// A cell of 0.2 mΩ at 1 kHz, charged to 3.65 V: 14.6 V / 0.8 mΩ, before bus bars and cable.
it('puts 18.25 kA through four cells of 0.2 mΩ, an upper estimate, and the same through sixteen', () => {
  const four = faultCurrentA({ cellsInSeries: 4, cellAcMohm: 0.2 });
  const sixteen = faultCurrentA({ cellsInSeries: 16, cellAcMohm: 0.2 });
  expect(four?.bound).toBe('upper');
  expect(four?.currentA).toBeCloseTo(18_250, 6);
  expect(sixteen?.currentA).toBeCloseTo(18_250, 6);
});

it('takes the AC resistance where both are known, and calls DC alone a lower estimate', () => {
  expect(faultCurrentA({ cellsInSeries: 4, cellAcMohm: 0.2, cellDcMohm: 0.6 })?.bound).toBe('upper');
  expect(faultCurrentA({ cellsInSeries: 4, cellAcMohm: 0.2, cellDcMohm: 0.6 })?.currentA).toBeCloseTo(18_250, 6);
  expect(faultCurrentA({ cellsInSeries: 4, cellDcMohm: 0.6 })?.bound).toBe('lower');
});

it('adds what else lies in the path: 14.6 V over 0.8 + 0.2 mΩ is 14.6 kA', () => {
  expect(faultCurrentA({ cellsInSeries: 4, cellAcMohm: 0.2, otherMohm: 0.2 })?.currentA).toBeCloseTo(14_600, 6);
});

it('has nothing to say where no resistance is known', () => {
  expect(faultCurrentA({ cellsInSeries: 4 })).toBeNull();
});

it.each([
  ['no cells', { cellsInSeries: 0 }],
  ['half a cell', { cellsInSeries: 4.5 }],
  ['no cell in parallel', { cellsInParallel: 0 }],
  ['no resistance', { cellAcMohm: 0 }],
  ['a negative rest', { otherMohm: -0.1 }],
  ['a rest that is not a number', { otherMohm: Number.NaN }],
  ['no voltage', { cellVoltageV: 0 }],
])('refuses bad input: %s', (_name, bad) => {
  expect(() => faultCurrentA({ cellsInSeries: 4, cellAcMohm: 0.2, ...bad })).toThrow(RangeError);
});
