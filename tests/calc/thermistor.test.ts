import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { thermistorBetaDegC, thermistorBetaK, thermistorBetaOhm } from '../../src/calc/thermistor-beta.ts';
import { thermistorDividerOhm } from '../../src/calc/thermistor-divider.ts';
import {
  steinhartHartThrough,
  thermistorSteinhartHartDegC,
  thermistorSteinhartHartOhm,
} from '../../src/calc/thermistor-steinhart-hart.ts';
import steinhart from '../fixtures/steinhart-hart.json';
import b3435 from '../fixtures/thermistor-10k-b3435.json';
import b3950 from '../fixtures/thermistor-10k-b3950.json';
import cases from '../fixtures/thermistor-cases.json';

const PART_3435 = Object.freeze({ referenceOhm: 10_000, betaK: 3435 });
const PART_3950 = Object.freeze({ referenceOhm: 10_000, betaK: 3950 });

describe('beta model', () => {
  it('meets both printed points that define it: 10 kΩ at 25 °C and 1.451 kΩ at 85 °C', () => {
    expect(thermistorBetaOhm({ ...PART_3435, tempDegC: 25 })).toBe(10_000);
    expect(thermistorBetaOhm({ ...PART_3435, tempDegC: 85 })).toBeCloseTo(1451, -0.5);
    expect(thermistorBetaDegC({ ...PART_3435, resistanceOhm: 1451 })).toBeCloseTo(85, 1);
    // B25/50: 3950 by its maker's table, which is 10.000 kΩ at 25 °C.
    expect(thermistorBetaDegC({ ...PART_3950, resistanceOhm: 10_000 })).toBeCloseTo(25, 12);
  });

  // What the docstring says of the model's error against the printed table.
  it.each(b3435.rows.filter(({ tC }) => tC >= -20 && tC <= 85))(
    'reads the printed $rKohm kΩ of $tC °C within 2.6 K',
    (row) => {
      const off = thermistorBetaDegC({ ...PART_3435, resistanceOhm: row.rKohm * 1000 }) - row.tC;
      const bound = row.tC < 0 ? 2.6 : row.tC < 25 ? 1.12 : 0.5;
      expect(Math.abs(off)).toBeLessThan(bound);
      if (row.tC < 25) expect(off).toBeGreaterThan(0);
    },
  );

  it.each([
    ['B = 3435', b3435.rows.map((row) => [row.tC, row.betaModelKohm, PART_3435] as const)],
    ['B = 3950', b3950.rows.map((row) => [row.tC, row.betaModel3950Kohm, PART_3950] as const)],
  ])('gives the recomputed model column of every row, %s, and goes back', (_name, rows) => {
    expect(rows.length).toBeGreaterThan(30);
    for (const [tempDegC, modelKohm, part] of rows) {
      const resistanceOhm = thermistorBetaOhm({ ...part, tempDegC });
      expect(resistanceOhm / 1000).toBeCloseTo(modelKohm, 4);
      expect(thermistorBetaDegC({ ...part, resistanceOhm })).toBeCloseTo(tempDegC, 9);
    }
  });

  it.each(b3950.rows.filter(({ tC }) => tC >= 0 && tC <= 35))(
    'reads the printed $rKohm kΩ of $tC °C (B = 3950) within 0.7 K',
    (row) => {
      const found = thermistorBetaDegC({ ...PART_3950, resistanceOhm: row.rKohm * 1000 });
      expect(Math.abs(found - row.tC)).toBeLessThan(0.7);
    },
  );

  it('finds B25/85 = 3435 in the printed table, and 3995 for the part sold as 3950', () => {
    const at = (tempDegC: number, kohm: number) => ({ tempDegC, resistanceOhm: kohm * 1000 });
    expect(Math.abs(thermistorBetaK(at(25, 10), at(85, 1.451)) - 3435)).toBeLessThan(1);
    expect(thermistorBetaK(at(25, 10), at(85, 1.0594))).toBeCloseTo(b3950.computed.B25_85, 6);
    expect(thermistorBetaK(at(0, 32.5807), at(25, 10))).toBeCloseTo(b3950.computed.B0_25, 6);
  });

  it.each([
    ['no resistance', () => thermistorBetaDegC({ ...PART_3435, resistanceOhm: 0 })],
    ['resistance that belongs to no temperature', () => thermistorBetaDegC({ ...PART_3435, resistanceOhm: 0.01 })],
    ['beta of 0', () => thermistorBetaOhm({ referenceOhm: 1, betaK: 0, tempDegC: 20 })],
    ['absolute zero', () => thermistorBetaOhm({ ...PART_3435, tempDegC: -273.15 })],
    [
      'one temperature twice',
      () => thermistorBetaK({ tempDegC: 5, resistanceOhm: 1 }, { tempDegC: 5, resistanceOhm: 2 }),
    ],
  ])('refuses bad input: %s', (_name, run) => {
    expect(run).toThrow(RangeError);
  });
});

describe('Steinhart–Hart', () => {
  const probe = steinhart.coefficients[0];
  const part = { a: probe?.A ?? 0, b: probe?.B ?? 0, c: probe?.C ?? 0 };

  it.each(steinhart.rows)(
    'reads the $rOhm Ω of a probe manual as $tC °C within 0.005 K',
    ({ rOhm, tC, computedTC }) => {
      const found = thermistorSteinhartHartDegC({ ...part, resistanceOhm: rOhm });
      expect(Math.abs(found - tC)).toBeLessThan(0.005);
      expect(found).toBeCloseTo(computedTC, 4);
      // The manual's resistances are printed to 0.1 Ω; 0.003 K of it is 0.02 %.
      expect(Math.abs(thermistorSteinhartHartOhm({ ...part, tempDegC: tC }) / rOhm - 1)).toBeLessThan(0.0002);
    },
  );

  it('goes there and back for both probes of the manual, −40 to 60 °C', () => {
    expect(steinhart.coefficients).toHaveLength(2);
    fc.assert(
      fc.property(
        fc.double({ min: -40, max: 60, noNaN: true }),
        fc.constantFrom(...steinhart.coefficients),
        (tempDegC, { A, B, C }) => {
          const resistanceOhm = thermistorSteinhartHartOhm({ a: A, b: B, c: C, tempDegC });
          expect(thermistorSteinhartHartDegC({ a: A, b: B, c: C, resistanceOhm })).toBeCloseTo(tempDegC, 8);
        },
      ),
    );
  });

  it('is the beta model where c is 0: 10 kΩ, B = 3435', () => {
    const flat = { a: 1 / 298.15 - Math.log(10_000) / 3435, b: 1 / 3435, c: 0 };
    const resistanceOhm = thermistorSteinhartHartOhm({ ...flat, tempDegC: 0 });
    expect(resistanceOhm).toBeCloseTo(thermistorBetaOhm({ ...PART_3435, tempDegC: 0 }), 6);
    expect(thermistorSteinhartHartDegC({ ...flat, resistanceOhm })).toBeCloseTo(0, 9);
  });

  it('finds the published coefficients through three points, and 34.7531 °C for 7 kΩ', () => {
    const [one, two, three] = steinhart.fit.points.map(([tempDegC = 0, resistanceOhm = 0]) => ({
      tempDegC,
      resistanceOhm,
    }));
    if (one === undefined || two === undefined || three === undefined) throw new Error('three points');
    const found = steinhartHartThrough([one, two, three]);
    const [a = 0, b = 0, c = 0] = steinhart.fit.coefficients;
    for (const [value, printed] of [
      [found.a, a],
      [found.b, b],
      [found.c, c],
    ] as const) {
      expect(Math.abs(value / printed - 1)).toBeLessThan(1e-9);
    }
    expect(thermistorSteinhartHartDegC({ ...found, resistanceOhm: steinhart.fit.r })).toBeCloseTo(steinhart.fit.tC, 4);
  });

  it.each([
    ['no resistance', () => thermistorSteinhartHartDegC({ ...part, resistanceOhm: 0 })],
    ['no temperature belongs to it', () => thermistorSteinhartHartDegC({ a: -1, b: 0, c: 0, resistanceOhm: 5 })],
    ['b of 0 on the way back', () => thermistorSteinhartHartOhm({ a: 0.001, b: 0, c: 1e-7, tempDegC: 5 })],
    ['c below 0 on the way back', () => thermistorSteinhartHartOhm({ ...part, c: -1e-7, tempDegC: 5 })],
    ['coefficient not finite', () => thermistorSteinhartHartOhm({ ...part, a: Number.NaN, tempDegC: 5 })],
    ['absolute zero', () => thermistorSteinhartHartOhm({ ...part, tempDegC: -300 })],
    [
      'equal resistances',
      () => {
        const point = { tempDegC: 5, resistanceOhm: 10 };
        return steinhartHartThrough([point, { ...point, tempDegC: 6 }, { ...point, resistanceOhm: 11 }]);
      },
    ],
    [
      'resistances whose logarithms sum to 0, through which no curve goes',
      () => {
        const at = (tempDegC: number, resistanceOhm: number) => ({ tempDegC, resistanceOhm });
        return steinhartHartThrough([at(0, 2), at(10, 1), at(20, 0.5)]);
      },
    ],
  ])('refuses bad input: %s', (_name, run) => {
    expect(run).toThrow(RangeError);
  });
});

describe('thermistor cases', () => {
  it.each(cases.cases)('reproduces $id: $expected', ({ id, inputs, expected, published, tolerance }) => {
    const found = caseValue(id, inputs);
    expect(Math.abs(found / expected - 1)).toBeLessThan(1e-6);
    if (published !== undefined) expect(Math.abs(found - published)).toBeLessThan(tolerance ?? 0);
  });

  it('gives 10 kΩ for half the reference on a 10 kΩ divider, and refuses a voltage at its ends', () => {
    const divider = { seriesOhm: 10_000, referenceV: 3.3 };
    expect(thermistorDividerOhm({ ...divider, acrossV: 1.65 })).toBe(10_000);
    for (const acrossV of [0, 3.3, -1, Number.NaN]) {
      expect(() => thermistorDividerOhm({ ...divider, acrossV })).toThrow(RangeError);
    }
  });
});

type Inputs = Partial<(typeof cases.cases)[number]['inputs']>;

function caseValue(id: string, inputs: Inputs): number {
  const { tC = 0, rKohm = 0, rOhm = 0, t1 = 0, t2 = 0, r1 = 0, r2 = 0, rSeriesKohm = 0, vRef = 0, vX = 0 } = inputs;
  if (id.includes('model-R')) return thermistorBetaOhm({ ...PART_3435, tempDegC: tC }) / 1000;
  if (id.includes('model-T')) return thermistorBetaDegC({ ...PART_3435, resistanceOhm: rKohm * 1000 });
  if (id.includes('beta25/85')) {
    return thermistorBetaK({ tempDegC: t1, resistanceOhm: r1 }, { tempDegC: t2, resistanceOhm: r2 });
  }
  if (id === 'ntc-divider') return thermistorDividerOhm({ seriesOhm: rSeriesKohm, referenceV: vRef, acrossV: vX });
  if (id.startsWith('sh-103AT-fit')) {
    const [one, two, three] = (inputs.points ?? []).map(([tempDegC = 0, resistanceOhm = 0]) => ({
      tempDegC,
      resistanceOhm,
    }));
    if (one === undefined || two === undefined || three === undefined) throw new Error(`${id} lacks a point`);
    return thermistorSteinhartHartDegC({ ...steinhartHartThrough([one, two, three]), resistanceOhm: rOhm });
  }
  const { A: a = 0, B: b = 0, C: c = 0 } = inputs;
  if (id.startsWith('sh-109')) return thermistorSteinhartHartDegC({ a, b, c, resistanceOhm: rOhm });
  throw new Error(`no such case: ${id}`);
}
