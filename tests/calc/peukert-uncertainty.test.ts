import { expect, it } from 'vitest';
import { peukertUncertainty } from '../../src/calc/peukert-uncertainty.ts';
import { studentTUpperTail } from '../../src/calc/student-t.ts';
import measured from '../fixtures/lfp-18650-rate-runs.json';

// scipy 1.17.1, of the fixture: linregress(log(currentsA), log(chargesAh / currentsA)).stderr
it('is 0.00586852 for a measured LFP cell at C/20, C/2 and 1C', () => {
  const runs = measured.currentsA.map((currentA, place) => ({ currentA, chargeAh: measured.chargesAh[place]! }));
  expect(peukertUncertainty(Object.freeze(runs))).toBeCloseTo(0.005868522674303263, 12);
});

// Currents 1, e, e² and hours e⁰, e⁻¹·e^d, e⁻²: residuals −d/3, 2d/3, −d/3, √(6d²/9 ÷ 1 ÷ 2).
it('is d ÷ √3 where the middle of three runs, evenly apart in log I, lies off by d = 0.03 (by hand)', () => {
  const runs = [0, 1, 2].map((log) => ({ currentA: Math.exp(log), chargeAh: 100 * Math.exp(log === 1 ? 0.03 : 0) }));
  expect(peukertUncertainty(runs)).toBeCloseTo(0.03 / Math.sqrt(3), 12);
});

it('covers 70 % with k = 2 of three runs, as its header says', () => {
  expect(1 - 2 * studentTUpperTail(2, 1)).toBeCloseTo((2 / Math.PI) * Math.atan(2), 12);
  expect((2 / Math.PI) * Math.atan(2)).toBeCloseTo(0.705, 3);
});

it('is not known of two rates, however often, nor of three within 10 % of one', () => {
  const equalCharges = (...currentsA: number[]) => currentsA.map((currentA) => ({ currentA, chargeAh: 100 }));
  expect(peukertUncertainty([])).toBeNull();
  expect(peukertUncertainty(equalCharges(20, 60))).toBeNull();
  expect(peukertUncertainty(equalCharges(20, 21, 60, 63))).toBeNull();
  expect(peukertUncertainty(equalCharges(20, 21, 22))).toBeNull();
  expect(peukertUncertainty(equalCharges(20, 60, 100))).toBeCloseTo(0, 12);
});

it('refuses a charge that is not positive', () => {
  expect(() => peukertUncertainty([{ currentA: 20, chargeAh: 0 }])).toThrow(
    new RangeError('peukertUncertainty: chargeAh must be positive, got 0'),
  );
});
