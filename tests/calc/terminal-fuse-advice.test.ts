import { describe, expect, it } from 'vitest';
import { FUSE_SIZES_A, fuseSizeFromA } from '../../src/calc/tables/fuse-sizes.ts';
import { type FuseQuestion, terminalFuseAdvice } from '../../src/calc/terminal-fuse-advice.ts';
import fixture from '../fixtures/fuse-selection.json' with { type: 'json' };

const question: FuseQuestion = Object.freeze<FuseQuestion>({
  continuousCurrentA: 100,
  leadAllowableA: 120,
  nominalVoltageV: 25.6,
  fullVoltageV: 29.2,
  fault: { currentA: 14_600, bound: 'upper' },
});
const ask = (given: Partial<FuseQuestion>) => terminalFuseAdvice({ ...question, ...given });

// NEC 210.20(A), printed examples.
it.each(fixture.rows.map((row) => [row.continuousA, row.leastA, row.ratingA] as const))(
  'asks %d A for at least %d A and takes the %d A fuse',
  (continuousCurrentA, leastA, ratingA) => {
    expect(ask({ continuousCurrentA })).toMatchObject({ fits: true, leastA, ratingA });
  },
);

it('gives a 24 V pack of 100 A on leads for 120 A a 125 A fuse for 29.2 V DC that interrupts 14.6 kA', () => {
  expect(ask({})).toEqual({
    fits: true,
    ratingA: 125,
    leastA: 125,
    mostA: 180,
    dcVoltageV: 29.2,
    interruptA: 14_600,
    interruptAtLeast20kA: false,
  });
});

// 33 CFR 183.455(c): 150 % of AWG 2, 105 °C (210 A) is 315 A.
it('allows up to 150 % of the lead under 50 V: 315 A on 210 A', () => {
  expect(ask({ leadAllowableA: 210, nominalVoltageV: 49.9 })).toMatchObject({ mostA: 315 });
});

describe('from 50 V the lead is the limit, but for the next standard size up to 150 %', () => {
  it.each([
    ['a lead that is a standard size', 50, 200, 200],
    ['the next size, 225 A, on 210 A', 51.2, 210, 225],
    ['the next size, 1 A, more than 150 % of 0.6 A', 51.2, 0.6, 0.6],
    ['the next size just at 150 %: 3 A on 2 A', 51.2, 2, 3],
    ['the next size just over: 3 A on 1.99 A', 51.2, 1.99, 1.99],
    ['no larger size at all', 51.2, 6500, 6500],
  ])('%s', (_name, nominalVoltageV, leadAllowableA, mostA) => {
    expect(ask({ nominalVoltageV, fullVoltageV: null, leadAllowableA })).toMatchObject({ mostA });
  });

  it('fits 250 A on leads for 210 A at 25.6 V, and nothing at 51.2 V', () => {
    const given = { continuousCurrentA: 200, leadAllowableA: 210 };
    expect(ask(given)).toMatchObject({ fits: true, ratingA: 250 });
    expect(ask({ ...given, nominalVoltageV: 51.2, fullVoltageV: 58.4 })).toEqual({
      fits: false,
      leastA: 250,
      mostA: 225,
    });
  });
});

describe('when nothing fits', () => {
  it('says so where least is above most: 200 A continuous on leads for 120 A', () => {
    expect(ask({ continuousCurrentA: 200 })).toEqual({ fits: false, leastA: 250, mostA: 180 });
  });

  it('says so where no standard size lies between: 162.5 to 172.5 A', () => {
    expect(ask({ continuousCurrentA: 130, leadAllowableA: 115 })).toEqual({ fits: false, leastA: 162.5, mostA: 172.5 });
  });

  it('says so above the largest standard size', () => {
    expect(ask({ continuousCurrentA: 5000, leadAllowableA: 9000 })).toMatchObject({ fits: false, leastA: 6250 });
  });
});

it('names everything that is missing, and only that', () => {
  expect(ask({ continuousCurrentA: null, leadAllowableA: null, nominalVoltageV: null })).toEqual({
    fits: null,
    missing: ['continuousCurrentA', 'leadAllowableA', 'nominalVoltageV'],
  });
  expect(ask({ leadAllowableA: null })).toEqual({ fits: null, missing: ['leadAllowableA'] });
});

describe('voltage', () => {
  // 16 × 3.65 V, the charge limit of a cell (tables/lfp-plausibility.ts).
  it('reckons 58.4 V for a 51.2 V pack whose full voltage is not known', () => {
    const found = ask({ nominalVoltageV: 51.2, fullVoltageV: null });
    expect(found.fits === true && found.dcVoltageV).toBeCloseTo(58.4, 9);
  });

  it('never asks for less than nominal', () => {
    expect(ask({ fullVoltageV: 20 })).toMatchObject({ dcVoltageV: 25.6 });
  });
});

describe('interrupt rating', () => {
  it.each([
    ['an upper estimate is enough', { currentA: 25_000, bound: 'upper' }, 25_000, false],
    ['a lower estimate is not: 20 kA or more', { currentA: 6000, bound: 'lower' }, null, true],
    ['a lower estimate under 20 kA adds nothing', { currentA: 19_999, bound: 'lower' }, null, true],
    ['a lower estimate above 20 kA is named too', { currentA: 20_001, bound: 'lower' }, 20_001, true],
    ['nothing known: 20 kA or more', null, null, true],
  ] as const)('%s', (_name, fault, interruptA, interruptAtLeast20kA) => {
    expect(ask({ fault })).toMatchObject({ interruptA, interruptAtLeast20kA });
  });
});

it('does not skip a size by a rounding error: 0.8 of every standard size leads back to it', () => {
  for (const sizeA of FUSE_SIZES_A) {
    const continuousCurrentA = Number((0.8 * sizeA).toFixed(1));
    expect(ask({ continuousCurrentA, leadAllowableA: sizeA })).toMatchObject({ fits: true, ratingA: sizeA });
  }
});

// NEC Table 240.6(A) as two public pages print it, and the 1, 3, 6 and 10 A they add for fuses.
it('has the 37 standard sizes and the four small ones, and none above 6000 A', () => {
  const printed =
    '15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000';
  expect(FUSE_SIZES_A).toEqual([1, 3, 6, 10, ...printed.split(', ').map(Number)]);
  expect(printed.split(', ')).toHaveLength(37);
  expect([fuseSizeFromA(110), fuseSizeFromA(110.1), fuseSizeFromA(6000), fuseSizeFromA(6001)]).toEqual([
    110,
    125,
    6000,
    null,
  ]);
});

it.each([
  ['no continuous current', { continuousCurrentA: 0 }],
  ['a lead for nothing', { leadAllowableA: 0 }],
  ['a negative voltage', { nominalVoltageV: -12.8 }],
  ['a full voltage that is not a number', { fullVoltageV: Number.NaN }],
])('refuses bad input: %s', (_name, bad) => {
  expect(() => ask(bad)).toThrow(RangeError);
});
