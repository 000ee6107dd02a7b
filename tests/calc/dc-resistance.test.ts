import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TwoReadings } from '../../src/calc/dc-resistance.ts';
import { dcResistancePulseMohm } from '../../src/calc/dc-resistance-pulse.ts';
import { dcResistanceTwoStepMohm } from '../../src/calc/dc-resistance-two-step.ts';
import fixture from '../fixtures/dc-resistance.json';

const TWO_STEP: Readonly<TwoReadings> = Object.freeze({
  firstA: 20,
  firstV: 13.2,
  secondA: 100,
  secondV: 13.04,
  cellsInSeries: 4,
});
type Change = Partial<TwoReadings> & { timeS?: number };
const CELLS = [4, 1, 16];
const twoStep = (change: Change) => dcResistanceTwoStepMohm({ ...TWO_STEP, ...change });

describe('dcResistanceTwoStepMohm', () => {
  it.each(fixture.rows.map((row, index) => ({ ...row, cellsInSeries: CELLS[index] ?? 1 })))(
    'gives $rMilliohm mΩ for row $id of our own',
    ({ u1, i1, u2, i2, rMilliohm, cellsInSeries }) => {
      const found = dcResistanceTwoStepMohm({ firstA: i1, firstV: u1, secondA: i2, secondV: u2, cellsInSeries });
      expect(found).toEqual({ ok: true, resistanceMohm: expect.closeTo(rMilliohm, 9) });
    },
  );

  it('gives 0.625 mΩ and 6 mΩ for the two recomputed cases', () => {
    const cases = fixture.cases.filter(({ id }) => id.startsWith('dcir-two-step'));
    expect(cases.map(({ inputs }) => inputs).length).toBe(2);
    for (const { inputs, expected, id } of cases) {
      const { u1 = 0, i1 = 0, u2 = 0, i2 = 0 } = inputs;
      const cellsInSeries = id.endsWith('b') ? 1 : 16;
      const found = dcResistanceTwoStepMohm({ firstA: i1, firstV: u1, secondA: i2, secondV: u2, cellsInSeries });
      expect(found).toMatchObject({ ok: true, resistanceMohm: expect.closeTo(expected, 9) });
    }
  });

  // Closed form: a source of E volts behind R gives V = E − I·R at any current.
  it('finds the R of a source V = E − I·R on the plateau, whatever the currents', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3.15, max: 3.38, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        (cellV, rMohm, firstA) => {
          const secondA = firstA + 40;
          const loadedV = (currentA: number) => cellV * 8 - (currentA * rMohm) / 1000;
          const readings = { firstA, firstV: loadedV(firstA), secondA, secondV: loadedV(secondA), cellsInSeries: 8 };
          expect(dcResistanceTwoStepMohm(readings)).toEqual({ ok: true, resistanceMohm: expect.closeTo(rMohm, 8) });
        },
      ),
    );
  });

  it('keeps the time where one is known', () => {
    expect(twoStep({ timeS: 1 })).toEqual({ ok: true, resistanceMohm: expect.closeTo(2, 9), timeS: 1 });
    expect(twoStep({})).not.toHaveProperty('timeS');
  });

  it.each<[string, Change]>([
    ['sameCurrent', { secondA: 20 }],
    ['sameCurrent', { firstA: 99.5 }],
    ['wrongWay', { secondV: 13.21 }],
    ['wrongWay', { secondV: 13.2 }],
    ['wrongWay', { secondA: 5, secondV: 13.23 }],
    ['nearFull', { firstV: 13.9, secondV: 13.5 }],
    ['belowKnee', { firstV: 12.0, secondV: 11.6 }],
  ])('refuses, %s: %o', (because, change) => {
    expect(twoStep(change)).toEqual({ ok: false, because });
  });

  it('refuses just over 3.40 V and just under 3.12 V per cell, carried back to no current', () => {
    const at = (cellV: number) => twoStep({ firstA: 0, firstV: cellV * 4, secondA: 100, secondV: cellV * 4 - 0.2 });
    expect(at(3.4)).toMatchObject({ ok: true });
    expect(at(3.4001)).toEqual({ ok: false, because: 'nearFull' });
    expect(at(3.12)).toMatchObject({ ok: true });
    expect(at(3.1199)).toEqual({ ok: false, because: 'belowKnee' });
  });

  it.each<Change>([
    { firstA: -1 },
    { secondA: -100 },
    { timeS: -1 },
    { firstV: Number.NaN },
    { cellsInSeries: 0 },
    { cellsInSeries: 1.5 },
  ])('throws at %o', (change) => {
    expect(() => twoStep(change)).toThrow(RangeError);
  });
});

describe('dcResistancePulseMohm', () => {
  // Measured on a 2.5 Ah cell at 50 % charge: source and licence in the fixture. Discharge is negative in that file.
  it.each(fixture.pulses.edges)('finds $mohm mΩ, $step, after $timeS s', ({ timeS, mohm, ...edge }) => {
    const found = dcResistancePulseMohm({ ...outPositive(edge), timeS });
    expect(found).toEqual({ ok: true, resistanceMohm: expect.closeTo(mohm, 2), timeS });
  });

  it('refuses the same cell from full, where the surface charge relaxes: 19.861 mΩ would be no resistance', () => {
    const { timeS, mohm, ...edge } = fixture.pulses.fromFull;
    expect((1000 * (edge.firstV - edge.secondV)) / (edge.firstA - edge.secondA)).toBeCloseTo(mohm, 2);
    expect(dcResistancePulseMohm({ ...outPositive(edge), timeS })).toEqual({ ok: false, because: 'nearFull' });
  });

  it('gives 10 mΩ for 13.2 V open and 13.0 V on 0.65 Ω, by R·(V₁ − V₂)/V₂', () => {
    const row = fixture.cases.find(({ id }) => id === 'dcir-load');
    const { v1 = 0, v2 = 0, rLoadOhm = 1 } = row?.inputs ?? {};
    const readings = { firstA: 0, firstV: v1, secondA: v2 / rLoadOhm, secondV: v2, cellsInSeries: 4, timeS: 5 };
    expect(dcResistancePulseMohm(readings)).toMatchObject({ ok: true, resistanceMohm: expect.closeTo(10, 9) });
    expect(row?.expected).toBeCloseTo(10, 9);
  });

  it.each([0, -1, Number.NaN])('throws at a time of %d s', (timeS) => {
    expect(() => dcResistancePulseMohm({ ...TWO_STEP, timeS })).toThrow(RangeError);
  });
});

function outPositive(edge: { firstA: number; firstV: number; secondA: number; secondV: number }) {
  return { ...edge, firstA: -edge.firstA, secondA: -edge.secondA, cellsInSeries: 1 };
}
