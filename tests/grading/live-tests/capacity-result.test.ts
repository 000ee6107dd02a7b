import { describe, expect, it } from 'vitest';
import { capacityResult } from '../../../src/grading/live-tests/capacity-result.ts';
import type { Entry } from '../../../src/schema/entry.ts';
import type { Nameplate } from '../../../src/schema/nameplate.ts';
import { id, packOf, test } from './tested-pack.ts';

const PLATE: Nameplate = { ratedCapacityAh: 300, nominalVoltageV: 12.8, chargeVoltageV: 14.4 };
/** Charged to the maker's voltage down to 0.02C, rested two hours. */
const BEGUN_FULL = { chargedToV: 14.4, taperA: 6, restMin: 120 };
const EMPTIED = { ...BEGUN_FULL, end: 'lowVoltage' };

function resultOf(nameplate: Nameplate, ...entries: Entry[]) {
  return capacityResult(packOf(nameplate, ...entries));
}

describe('a 300 Ah pack that gave 322.6 Ah at 0.2C and disconnected after 292.2 Ah at a hard rate', () => {
  const gentle = test('run', 1, { ...EMPTIED, chargeAh: 322.6, currentA: 60 });
  const hard = test('run', 2, { ...BEGUN_FULL, end: 'packDisconnect', chargeAh: 292.2, currentA: 200 });

  it('delivered 322.6 Ah, 107.5 % of its rating, with neither retention nor exponent', () => {
    const result = resultOf(PLATE, gentle, hard);
    expect(result.completeCount).toBe(1);
    expect(result.delivered).toMatchObject({ chargeAh: 322.6, energyWh: null, atLeast: false, runIds: [id(1)] });
    expect(result.delivered?.chargeShareFrac).toBeCloseTo(322.6 / 300, 12);
    expect(result.retention).toBeNull();
    expect(result.peukert).toBeNull();
    expect(result.runs.map(({ completeness }) => completeness)).toEqual([
      { complete: true },
      { complete: false, because: ['notEndedLow'] },
    ]);
  });

  it('delivered at least 292.2 Ah where only the hard run is known, at no cost that could be told', () => {
    const result = resultOf({ ...PLATE, price: 400 }, hard);
    expect(result.delivered).toMatchObject({ chargeAh: 292.2, atLeast: true, runIds: [id(2)] });
    expect(result.gentle).toBeNull();
    expect(result.cost).toBeNull();
  });
});

describe('a pack that gave 292.2 Ah at 60 A and 292.0 Ah at 200 A, both complete', () => {
  const runs = [
    test('run', 1, { ...EMPTIED, chargeAh: 292.2, currentA: 60 }),
    test('run', 2, { ...EMPTIED, chargeAh: 292.0, currentA: 200 }),
  ];

  it('keeps 99.93 % at the hard rate', () => {
    const { retention } = resultOf(PLATE, ...runs);
    expect(retention).toMatchObject({ gentleA: 60, hardA: 200, gentleRunIds: [id(1)], hardRunIds: [id(2)] });
    expect(retention?.frac).toBeCloseTo(0.99932, 5);
  });

  it('has an exponent of 1.00057, within 0.001 of 1', () => {
    // k = ln(t1/t2) ÷ ln(I2/I1) = ln(4.87/1.46) ÷ ln(200/60).
    const { peukert } = resultOf(PLATE, ...runs);
    expect(peukert?.exponent).toBeCloseTo(Math.log(4.87 / 1.46) / Math.log(200 / 60), 9);
    expect(Math.abs((peukert?.exponent ?? 0) - 1)).toBeLessThan(0.001);
    expect(peukert?.exponentUncertainty).toBeNull();
    expect(peukert?.runIds).toEqual([id(1), id(2)]);
  });

  it('is known to a standard uncertainty of 0.0062 with 291 Ah and 285 Ah at 100 and 200 A instead', () => {
    const more = [[100, 291] as const, [200, 285] as const].map(([currentA, chargeAh], at) =>
      test('run', at + 2, { ...EMPTIED, chargeAh, currentA }),
    );
    // scipy 1.17.1, linregress(log I, log(Q/I)).stderr of 60, 100 and 200 A.
    const { peukert } = resultOf(PLATE, ...runs.slice(0, 1), ...more);
    expect(peukert?.exponentUncertainty).toBeCloseTo(0.006158475940855085, 12);
  });

  it('costs 106.95 per kWh at a price of 400, by charge and nominal voltage', () => {
    const { cost } = resultOf({ ...PLATE, price: 400, currency: 'EUR', pricedOn: '2026-02-01' }, ...runs);
    expect(cost?.perKwh).toBeCloseTo(106.95, 2);
    expect(cost).toMatchObject({ basis: 'nominalVoltage', price: 400, currency: 'EUR', pricedOn: '2026-02-01' });
    expect(cost).toMatchObject({ chargeAh: 292.2, energyWh: null, nominalVoltageV: 12.8, uncertaintyPerKwh: null });
  });

  it('costs 100 per kWh where 4000 Wh were measured, whatever the nominal voltage', () => {
    const measured = test('run', 3, { ...EMPTIED, chargeAh: 300, energyWh: 4000, currentA: 60 });
    const { cost } = resultOf({ ...PLATE, price: 400 }, measured);
    expect(cost?.perKwh).toBeCloseTo(100, 12);
    expect(cost).toMatchObject({ basis: 'measured', energyWh: 4000 });
  });

  it('has no cost without a price, and none by a nominal voltage that nobody noted', () => {
    expect(resultOf(PLATE, ...runs).cost).toBeNull();
    expect(resultOf({ ratedCapacityAh: 300, chargeVoltageV: 14.4, price: 400 }, ...runs).cost).toBeNull();
  });
});

describe('what feeds nothing', () => {
  it('a typed run that does not say how it began: at least 322.6 Ah', () => {
    const typed = test('run', 1, { end: 'lowVoltage', chargeAh: 322.6, currentA: 60 });
    const result = resultOf({ ...PLATE, price: 400 }, typed);
    expect(result.runs[0]?.completeness).toEqual({ complete: false, because: ['startUnknown'] });
    expect(result.delivered).toMatchObject({ chargeAh: 322.6, atLeast: true });
    expect(result).toMatchObject({ completeCount: 0, gentle: null, retention: null, peukert: null, cost: null });
  });

  it('a complete run whose current is not known: at least 322.6 Ah, for it is at no rate', () => {
    const result = resultOf(PLATE, test('run', 1, { ...EMPTIED, chargeAh: 322.6 }));
    expect(result).toMatchObject({ completeCount: 1, gentle: null });
    expect(result.delivered).toMatchObject({ chargeAh: 322.6, atLeast: true });
  });

  it('a run that ended in taper, for it was a charge', () => {
    expect(resultOf(PLATE, test('run', 1, { end: 'taper', chargeAh: 310, currentA: 60 })).delivered).toBeNull();
  });

  it('a pack without runs', () => {
    expect(resultOf(PLATE)).toEqual({
      runs: [],
      completeCount: 0,
      gentle: null,
      delivered: null,
      retention: null,
      peukert: null,
      cost: null,
    });
  });
});

describe('several complete runs', () => {
  it('means 300 and 310 Ah at 58 and 62 A to 305 Ah, and leaves out 280 Ah at 200 A', () => {
    const { gentle, delivered } = resultOf(
      { ...PLATE, ratedEnergyWh: 4000 },
      test('run', 1, { ...EMPTIED, chargeAh: 300, energyWh: 3800, currentA: 58 }),
      test('run', 2, { ...EMPTIED, chargeAh: 310, currentA: 62 }),
      test('run', 3, { ...EMPTIED, chargeAh: 280, energyWh: 3500, currentA: 200 }),
    );
    expect(gentle).toMatchObject({ currentA: 60, chargeAh: 305, energyWh: 3800, count: 2, runIds: [id(1), id(2)] });
    expect(delivered).toMatchObject({ chargeAh: 305, energyWh: 3800, energyShareFrac: 0.95, atLeast: false });
  });

  it('take the gentler of 72 and 48 A, both 12 A off 0.2C: 290 Ah by the second run', () => {
    const { gentle } = resultOf(
      PLATE,
      test('run', 1, { ...EMPTIED, chargeAh: 280, currentA: 72 }),
      test('run', 2, { ...EMPTIED, chargeAh: 290, currentA: 48 }),
    );
    expect(gentle).toMatchObject({ currentA: 48, chargeAh: 290, count: 1, runIds: [id(2)] });
  });

  it('takes the greatest charge of one and the greatest energy of another where none is complete', () => {
    const { delivered } = resultOf(
      PLATE,
      test('run', 1, { end: 'stopped', chargeAh: 200, energyWh: 2700 }),
      test('run', 2, { end: 'stopped', chargeAh: 210, energyWh: 2600 }),
    );
    expect(delivered).toMatchObject({ chargeAh: 210, energyWh: 2700, atLeast: true, runIds: [id(2), id(1)] });
  });
});

describe('one run by itself', () => {
  it('reads 60 A, 0.2C and 13 V off 300 Ah and 3900 Wh in 5 h', () => {
    const [run] = resultOf(PLATE, test('run', 1, { chargeAh: 300, energyWh: 3900, durationS: 18_000 })).runs;
    expect(run).toMatchObject({ currentA: 60, ratePerH: 0.2, shareOfRatedFrac: 1, meanVoltageV: 13 });
    expect(run?.completeness).toEqual({ complete: false, because: ['endUnknown', 'startUnknown'] });
  });

  it('tells nothing of a run of which only the end was noted', () => {
    const [run] = resultOf({}, test('run', 1, { end: 'stopped' })).runs;
    expect(run).toMatchObject({
      instrument: null,
      currentA: null,
      ratePerH: null,
      shareOfRatedFrac: null,
      energyWh: null,
      meanVoltageV: null,
      chargeUncertaintyAh: null,
      energyUncertaintyWh: null,
    });
  });
});

describe('uncertainty of a 10 h run of 30 A and 13 V, by hand', () => {
  const METER = { name: 'Bench meter', currentReadingPct: 0.5, currentAbsoluteA: 0.1 };
  const VOLTS = { voltageReadingPct: 0.1, voltageAbsoluteV: 0.01 };
  const RUN = { ...EMPTIED, chargeAh: 300, energyWh: 3900, durationS: 36_000, instrumentId: id(9) };

  it('is 1.443 Ah for 0.5 % + 0.1 A', () => {
    // Half-width 0.005 · 300 Ah + 0.1 A · 10 h = 2.5 Ah; 2.5 ÷ √3.
    const [run] = resultOf(PLATE, test('instrument', 9, METER), test('run', 1, RUN)).runs;
    expect(run?.instrument?.name).toBe('Bench meter');
    expect(run?.chargeUncertaintyAh).toBeCloseTo(1.4433757, 7);
    expect(run?.energyUncertaintyWh).toBeNull();
  });

  it('is 19.18 Wh with 0.1 % + 0.01 V, and 0.492 of 100 per kWh', () => {
    // Current 0.005 · 3900 + 0.1 · 13 · 10 = 32.5 Wh, voltage 0.001 · 3900 + 0.01 · 300 = 6.9 Wh; √(32.5² + 6.9²) ÷ √3.
    const result = resultOf(
      { ...PLATE, price: 390 },
      test('instrument', 9, { ...METER, ...VOLTS }),
      test('run', 1, RUN),
    );
    expect(result.delivered?.energyUncertaintyWh).toBeCloseTo(19.18211, 5);
    expect(result.cost?.perKwh).toBeCloseTo(100, 12);
    expect(result.cost?.uncertaintyPerKwh).toBeCloseTo(0.491849, 6);
  });

  it('is 0.501 of 104.17 per kWh where the cost rests on nominal voltage', () => {
    // 400 ÷ (300 Ah · 12.8 V) · 1000 = 104.1667; times 1.4433757 ÷ 300.
    const run = { ...EMPTIED, chargeAh: 300, durationS: 36_000, instrumentId: id(9) };
    const { cost } = resultOf({ ...PLATE, price: 400 }, test('instrument', 9, METER), test('run', 1, run));
    expect(cost?.uncertaintyPerKwh).toBeCloseTo(0.5011721, 6);
  });

  it('does not shrink over two runs with one meter: 1.443 Ah', () => {
    const { gentle } = resultOf(PLATE, test('instrument', 9, METER), test('run', 1, RUN), test('run', 2, RUN));
    expect(gentle).toMatchObject({ count: 2 });
    expect(gentle?.chargeUncertaintyAh).toBeCloseTo(1.4433757, 7);
  });

  it('cannot be told where a part of the accuracy was not noted, or one of two runs has no meter', () => {
    const half = resultOf(PLATE, test('instrument', 9, { name: 'Meter', currentReadingPct: 0.5 }), test('run', 1, RUN));
    expect(half.runs[0]?.chargeUncertaintyAh).toBeNull();
    const { instrumentId: _, ...without } = RUN;
    const two = resultOf(PLATE, test('instrument', 9, METER), test('run', 1, RUN), test('run', 2, without));
    expect(two.gentle?.chargeUncertaintyAh).toBeNull();
  });
});
