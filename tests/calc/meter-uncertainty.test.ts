import { describe, expect, it } from 'vitest';
import {
  chargeUncertaintyAh,
  costUncertaintyPerKwh,
  energyUncertaintyWh,
  type MeterAccuracy,
  type MeteredEnergy,
} from '../../src/calc/meter-uncertainty.ts';

const accuracy = (readingFrac: number, absolute: number): MeterAccuracy => Object.freeze({ readingFrac, absolute });
const EXACT = accuracy(0, 0);
/** 20 A and 13 V held for 5 h: 100 Ah, 1300 Wh. */
const RUN = Object.freeze({ energyWh: 1300, chargeAh: 100, durationS: 18_000, meanVoltageV: 13 });

describe('charge, closed forms by GUM 4.3.7', () => {
  it('gives √3 ÷ 3 Ah for ± 1 % of 100 Ah', () => {
    expect(chargeUncertaintyAh({ ...RUN, current: accuracy(0.01, 0) })).toBeCloseTo(Math.sqrt(3) / 3, 12);
  });

  it('gives 0.5 ÷ √3 Ah for ± 0.1 A over 5 h', () => {
    expect(chargeUncertaintyAh({ ...RUN, current: accuracy(0, 0.1) })).toBeCloseTo(0.28867513, 8);
  });

  it('adds both parts of one meter before dividing: ± (1 % + 0.1 A) is 1.5 ÷ √3 Ah', () => {
    expect(chargeUncertaintyAh({ ...RUN, current: accuracy(0.01, 0.1) })).toBeCloseTo(0.8660254, 7);
  });

  it('is the spread of a meter that is off by anything within ± 1 % all run long: 0.5774 Ah', () => {
    // 100 001 evenly spaced errors; standard deviation of the charge they lead to.
    const errorsAh = Array.from({ length: 100_001 }, (_, step) => (step / 50_000 - 1) * 0.01 * 100);
    const spreadAh = Math.sqrt(errorsAh.reduce((sum, error) => sum + error ** 2, 0) / errorsAh.length);
    expect(chargeUncertaintyAh({ ...RUN, current: accuracy(0.01, 0) })).toBeCloseTo(spreadAh, 4);
  });

  it('does not shrink when the run is read as two halves that are then added', () => {
    const half = { chargeAh: 50, durationS: 9000, current: accuracy(0.01, 0.1) };
    const whole = chargeUncertaintyAh({ ...RUN, current: half.current });
    expect(2 * chargeUncertaintyAh(half)).toBeCloseTo(whole, 12);
  });
});

describe('energy, closed forms', () => {
  it('gives 0 for exact meters', () => {
    expect(energyUncertaintyWh({ ...RUN, current: EXACT, voltage: EXACT })).toBe(0);
  });

  it('gives 13 ÷ √3 Wh for ± 1 % of either meter alone', () => {
    expect(energyUncertaintyWh({ ...RUN, current: accuracy(0.01, 0), voltage: EXACT })).toBeCloseTo(7.5055535, 6);
    expect(energyUncertaintyWh({ ...RUN, current: EXACT, voltage: accuracy(0.01, 0) })).toBeCloseTo(7.5055535, 6);
  });

  it('gives 6.5 ÷ √3 Wh for ± 0.1 A (0.1 · 13 · 5) and 10 ÷ √3 Wh for ± 0.1 V (0.1 · 100)', () => {
    expect(energyUncertaintyWh({ ...RUN, current: accuracy(0, 0.1), voltage: EXACT })).toBeCloseTo(3.7527767, 6);
    expect(energyUncertaintyWh({ ...RUN, current: EXACT, voltage: accuracy(0, 0.1) })).toBeCloseTo(5.7735027, 6);
  });

  it('combines two independent meters as 3, 4 and 5: 5 ÷ √3 Wh', () => {
    const current = accuracy(3 / 1300, 0);
    const voltage = accuracy(4 / 1300, 0);
    expect(energyUncertaintyWh({ ...RUN, current, voltage })).toBeCloseTo(5 / Math.sqrt(3), 12);
  });
});

it('makes the cost uncertain by the same share as the energy: 2 of 200 per kWh for 25 of 2500 Wh', () => {
  expect(costUncertaintyPerKwh({ costPerKwh: 200, energyWh: 2500, energyUncertaintyWh: 25 })).toBe(2);
});

it('agrees with the cost at the two ends of the energy to first order: 0.02 of 200 ± 2', () => {
  const halfSpread = (500 / 2.475 - 500 / 2.525) / 2;
  expect(costUncertaintyPerKwh({ costPerKwh: 200, energyWh: 2500, energyUncertaintyWh: 25 })).toBeCloseTo(
    halfSpread,
    2,
  );
});

describe('bad input', () => {
  const metered: MeteredEnergy = { ...RUN, current: EXACT, voltage: EXACT };
  it.each<[string, Partial<MeteredEnergy>]>([
    ['energyWh must be positive, got 0', { energyWh: 0 }],
    ['chargeAh must be positive, got -1', { chargeAh: -1 }],
    ['durationS must be positive, got NaN', { durationS: Number.NaN }],
    ['meanVoltageV must be positive, got 0', { meanVoltageV: 0 }],
    ['current.readingFrac must be 0 or more, got -0.01', { current: accuracy(-0.01, 0) }],
    ['voltage.absolute must be 0 or more, got -0.1', { voltage: accuracy(0, -0.1) }],
  ])('is refused for energy: %s', (message, changed) => {
    expect(() => energyUncertaintyWh({ ...metered, ...changed })).toThrow(
      new RangeError(`energyUncertaintyWh: ${message}`),
    );
  });

  it.each<[string, Partial<MeteredEnergy>]>([
    ['chargeAh must be positive, got 0', { chargeAh: 0 }],
    ['durationS must be positive, got 0', { durationS: 0 }],
    ['current.absolute must be 0 or more, got -0.1', { current: accuracy(0, -0.1) }],
  ])('is refused for charge: %s', (message, changed) => {
    expect(() => chargeUncertaintyAh({ ...metered, ...changed })).toThrow(
      new RangeError(`chargeUncertaintyAh: ${message}`),
    );
  });

  it.each([
    ['costPerKwh must be 0 or more, got -1', { costPerKwh: -1 }],
    ['energyWh must be positive, got 0', { energyWh: 0 }],
    ['energyUncertaintyWh must be 0 or more, got -1', { energyUncertaintyWh: -1 }],
  ])('is refused for cost: %s', (message, changed) => {
    const given = { costPerKwh: 200, energyWh: 2500, energyUncertaintyWh: 25, ...changed };
    expect(() => costUncertaintyPerKwh(given)).toThrow(new RangeError(`costUncertaintyPerKwh: ${message}`));
  });
});
