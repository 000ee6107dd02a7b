import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { above, atLeast, atMost, below, between, exactly, type Reading } from '../../../src/grading/derive/figure.ts';
import { gradesOf } from '../../../src/grading/derive/grades-of.ts';
import type { Band } from '../../../src/schema/checklist.ts';
import { GRADES, gradeRank } from '../../../src/schema/grade.ts';

/** Bands written for this test: the edges are what is checked, and they are worked out by hand. */
const RISING: Band[] = [
  { grade: 'sound', upTo: 10 },
  { grade: 'passable', upTo: 30 },
  { grade: 'weak', under: 50 },
  { grade: 'failed' },
];
const FALLING: Band[] = [
  { grade: 'sound', from: 0 },
  { grade: 'passable', from: -5 },
  { grade: 'weak', over: -10 },
  { grade: 'failed' },
];
const TWO_SIDED: Band[] = [
  { grade: 'sound', from: 3.2, upTo: 3.4 },
  { grade: 'passable', from: 3, upTo: 3.5 },
  { grade: 'failed' },
];

function grades(bands: Band[], ...readings: Omit<Reading, 'case'>[]): string {
  const alternative = readings.map((reading) => ({ case: 'any', ...reading }));
  return gradesOf({ any: bands }, { alternatives: [alternative] }, GRADES).join(' ');
}

describe('a figure that is known', () => {
  it.each([
    [10, 'sound'],
    [10.0001, 'passable'],
    [30, 'passable'],
    [49.9999, 'weak'],
    [50, 'failed'],
  ])('at %d goes to the first band that holds: %s', (value, expected) => {
    expect(grades(RISING, { figure: exactly(value) })).toBe(expected);
  });

  it.each([
    [0, 'sound'],
    [-0.0001, 'passable'],
    [-5, 'passable'],
    [-9.9999, 'weak'],
    [-10, 'failed'],
  ])('at %d, where lower is worse: %s', (value, expected) => {
    expect(grades(FALLING, { figure: exactly(value) })).toBe(expected);
  });

  it.each([
    [3.2, 'sound'],
    [3.19, 'passable'],
    [3.45, 'passable'],
    [2.99, 'failed'],
    [3.51, 'failed'],
  ])('at %d, between limits on both sides: %s', (value, expected) => {
    expect(grades(TWO_SIDED, { figure: exactly(value) })).toBe(expected);
  });
});

describe('a figure known in part', () => {
  it.each([
    ['at least 30', atLeast(30), 'passable weak failed'],
    ['above 30', above(30), 'weak failed'],
    ['at least 50', atLeast(50), 'failed'],
    ['at most 10', atMost(10), 'sound'],
    ['between 10 and 20', between(10, 20), 'sound passable'],
    ['between 31 and 49', between(31, 49), 'weak'],
  ])('leaves what it may be: %s', (_, figure, expected) => {
    expect(grades(RISING, { figure })).toBe(expected);
  });

  it('below −5 leaves weak and failed, below −10 failed alone', () => {
    expect(grades(FALLING, { figure: below(-5) })).toBe('weak failed');
    expect(grades(FALLING, { figure: below(-10) })).toBe('failed');
  });

  it('on both sides of the sound band leaves the bands round it: at least 3.4 is sound, passable or failed', () => {
    expect(grades(TWO_SIDED, { figure: atLeast(3.4) })).toBe('sound passable failed');
    expect(grades(TWO_SIDED, { figure: between(3.1, 3.45) })).toBe('sound passable');
  });
});

describe('several readings', () => {
  it('count by the worst: 5 and 40 are weak', () => {
    expect(grades(RISING, { figure: exactly(5) }, { figure: exactly(40) })).toBe('weak');
  });

  it('leave no better than the worst that is sure: 40 beside "at least 5" is weak or failed', () => {
    expect(grades(RISING, { figure: exactly(40) }, { figure: atLeast(5) })).toBe('weak failed');
  });

  it('of which one is true leave both: alternatives 5 and 40 are sound or weak', () => {
    const alternatives = [[{ case: 'any', figure: exactly(5) }], [{ case: 'any', figure: exactly(40) }]];
    expect(gradesOf({ any: RISING }, { alternatives }, GRADES)).toEqual(['sound', 'weak']);
  });

  it('leave worse grades of the item’s own possible while not all was read: 20 leaves passable, weak, failed', () => {
    const derived = { alternatives: [[{ case: 'any', figure: exactly(20) }]], orWorse: true };
    expect(gradesOf({ any: RISING }, derived, ['sound', 'passable', 'failed'])).toEqual(['passable', 'failed']);
  });
});

it('without a figure takes the last band of the case', () => {
  expect(
    gradesOf({ any: RISING, ice: [{ grade: 'passable' }] }, { alternatives: [[{ case: 'ice' }]] }, GRADES),
  ).toEqual(['passable']);
});

it('refuses a case without bands by name, and an alternative without readings', () => {
  const unknown = { alternatives: [[{ case: 'constructor' }]] };
  expect(() => gradesOf({ any: RISING }, unknown, GRADES)).toThrow(
    'gradesOf: the case must have bands, got constructor',
  );
  expect(() => gradesOf({ any: RISING }, { alternatives: [[]] }, GRADES)).toThrow('must have a reading, got none');
});

it('never lets NaN or an interval turned round become a figure', () => {
  expect(() => exactly(Number.NaN)).toThrow(RangeError);
  expect(() => between(2, 1)).toThrow('low must be a number up to high, got 2 and 1');
});

it('agrees with trying every value: an interval leaves just the grades of the values inside it', () => {
  // Independent of the intervals' algebra: a grid of values, each put through the bands one by one.
  const gradeOf = (bands: Band[], value: number) =>
    bands.find(
      ({ from = -Infinity, over = -Infinity, upTo = Infinity, under = Infinity }) =>
        value >= from && (value > over || over === -Infinity) && value <= upTo && (value < under || under === Infinity),
    )?.grade;
  const limit = fc.integer({ min: -8, max: 8 });
  const band = fc.record({ low: fc.option(limit), high: fc.option(limit), lowIn: fc.boolean(), highIn: fc.boolean() });
  fc.assert(
    fc.property(fc.array(band, { maxLength: 3 }), limit, fc.nat(16), (drawn, low, width) => {
      const bands: Band[] = [
        ...drawn.map(({ low: from, high: upTo, lowIn, highIn }, at) => ({
          grade: GRADES[at] ?? 'sound',
          ...(from !== null && (lowIn ? { from } : { over: from })),
          ...(upTo !== null && (highIn ? { upTo } : { under: upTo })),
        })),
        { grade: GRADES[drawn.length] ?? 'failed' },
      ];
      const grid = Array.from({ length: width * 2 + 1 }, (_, at) => low + at / 2);
      const expected = new Set(grid.map((value) => gradeOf(bands, value)));
      const found = gradesOf(
        { any: bands },
        { alternatives: [[{ case: 'any', figure: between(low, low + width) }]] },
        GRADES,
      );
      expect(found).toEqual([...expected].sort((a, b) => gradeRank(a ?? 'failed') - gradeRank(b ?? 'failed')));
    }),
    { numRuns: 3000 },
  );
});

it('drops the binary noise of a difference: 3.31 V less 3.30 V is 10 mV, and sound', () => {
  const differenceMv = (3.31 - 3.3) * 1000;
  expect(differenceMv).toBeGreaterThan(10);
  expect(grades(RISING, { figure: exactly(differenceMv) })).toBe('sound');
});
