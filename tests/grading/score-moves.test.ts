import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { GradedBy } from '../../src/grading/item-changes.ts';
import type { Judged } from '../../src/grading/judged.ts';
import { type ScoreMoves, scoreMoves } from '../../src/grading/score-moves.ts';
import type { Checklist } from '../../src/schema/checklist.ts';
import { graded } from './answer-with.ts';
import { definitionArb } from './arbitrary-definition.ts';
import { recordArb } from './arbitrary-record.ts';
import { deepFreeze } from './deep-freeze.ts';
import { definitionWith, rawItem } from './small-definition.ts';

/** Two items of one weight in one zone; the second bears a hazard: II × D medium 0.95 weak, II × C serious 0.70 failed. */
const ONE = rawItem({ id: 'one', zone: 'case' });
const TWO = rawItem({ id: 'two', zone: 'case', hazard: 'chafe', severity: 2 });
const BASE = { zones: [{ id: 'case', title: 'Case', weight: 1 }], items: [ONE, TWO], remedies: [] };
type Parts = Parameters<typeof definitionWith>[0];

const RECORD = deepFreeze({
  route: 'whole',
  facts: {},
  answers: { one: graded('passable'), two: graded('weak') },
}) satisfies Judged;

function under(definition: Checklist, record: Judged = RECORD): GradedBy {
  return deepFreeze({ definition, grading: gradeRecord(definition, record) });
}
function movesTo(parts: Partial<Parts>, record: Judged = RECORD): ScoreMoves {
  return scoreMoves(under(definitionWith(BASE), record), under(definitionWith({ ...BASE, ...parts }), record));
}
function sumOf({ items, hazards, shares, sameFactors }: ScoreMoves): number {
  const all = [...items.map(({ points }) => points), ...hazards.map(({ points }) => points)];
  return [...all, shares.points, sameFactors.points].reduce<number>((sum, points) => sum + (points ?? Number.NaN), 0);
}
const near = (points: number) => expect.closeTo(points, 9);

// Before: one loses 50 · 0.25 = 12.5, two 50 · 0.65 = 32.5; Build 55; chafe medium takes 55 · 0.05 = 2.75; Score 52.25.
describe('two items, 52.25 points', () => {
  it('does not move under the same definition', () => {
    expect(movesTo({})).toEqual({
      moved: false,
      lowChange: 0,
      items: [],
      hazards: [],
      shares: { count: 0, points: 0 },
      sameFactors: { count: 0, points: 0 },
    });
  });

  // Thirds now: one loses 8.333, two 21.667, three (open, at its worst) 33.333; Build 36.667; factor takes 1.8333; 34.8333.
  it('with an item added and open: it takes 33.33, the two others weigh 15 less, the factor takes 0.92 less', () => {
    const moves = movesTo({ items: [ONE, TWO, rawItem({ id: 'three', zone: 'case' })] });
    expect(moves).toMatchObject({
      moved: true,
      lowChange: near(34.8333333333 - 52.25),
      items: [{ itemId: 'three', reasons: ['addedOpen'], points: near(-100 / 3) }],
      hazards: [],
      shares: { count: 2, points: near(15) },
      sameFactors: { count: 1, points: near(2.75 - (0.05 * 110) / 3) },
    });
  });

  it('with an item added that was answered already: it is named as settled, and moves by what it comes to', () => {
    const record = { ...RECORD, answers: { ...RECORD.answers, three: graded('sound') } };
    const moves = movesTo({ items: [ONE, TWO, rawItem({ id: 'three', zone: 'case' })] }, record);
    expect(moves.items).toMatchObject([{ itemId: 'three', reasons: ['addedSettled'], points: 0 }]);
    expect(moves.lowChange).toBeCloseTo(0.95 * 70 - 52.25, 9);
  });

  // One alone: it loses 25, no hazard; Score 75.
  it('with an item removed: its 32.5 points come back, and its hazard’s 2.75', () => {
    expect(movesTo({ items: [ONE] })).toMatchObject({
      lowChange: near(22.75),
      items: [{ itemId: 'two', reasons: ['removed'], points: near(32.5) }],
      hazards: [{ hazardId: 'chafe', reason: 'risk', was: { risk: 'medium', k: 0.95 }, points: near(2.75) }],
      shares: { count: 1, points: near(-12.5) },
    });
  });

  // Weight 3 of 4: two loses 75 · 0.65 = 48.75 (−16.25), one 6.25 (+6.25).
  it('with a weight from 1 to 3: that item takes 16.25 more and is named, the other is a shifted share', () => {
    expect(movesTo({ items: [ONE, { ...TWO, weight: 3 }] })).toMatchObject({
      items: [{ itemId: 'two', reasons: ['otherWeight'], points: near(-16.25) }],
      shares: { count: 1, points: near(6.25) },
    });
  });

  // Weak earns 0.5 in place of 0.35: two loses 25 (+7.5); Build 62.5.
  it('with another credit for weak: the weak item is named with its 7.5 points, the passable one is not', () => {
    const moves = movesTo({ credits: { sound: 1, passable: 0.75, weak: 0.5, failed: 0 } });
    expect(moves).toMatchObject({
      items: [{ itemId: 'two', reasons: ['otherCredit'], points: near(7.5) }],
      shares: { count: 0, points: near(0) },
      sameFactors: { count: 1, points: near(2.75 - 3.125) },
    });
  });

  it('with another factor for medium: 0.95 to 0.90 takes 2.75 more', () => {
    expect(movesTo({ k: { high: 0.4, serious: 0.7, medium: 0.9, low: 1 } })).toMatchObject({
      lowChange: near(-2.75),
      items: [],
      hazards: [{ hazardId: 'chafe', reason: 'factor', was: { k: 0.95 }, now: { k: 0.9 }, points: near(-2.75) }],
    });
  });

  it('with other sentences the item is named although its points stay; its answer was given to the earlier ones', () => {
    expect(movesTo({ items: [{ ...ONE, grades: { ...ONE.grades, passable: 'Scuffed.' } }, TWO] })).toMatchObject({
      moved: false,
      items: [{ itemId: 'one', reasons: ['otherMeaning'], points: 0 }],
    });
  });

  it('with a condition whose fact is open: the item may fall away and counts nothing at the low end', () => {
    const onlyIf = { fact: 'metal-case', is: 'yes' };
    expect(movesTo({ items: [ONE, { ...TWO, onlyIf }] }).items).toMatchObject([
      { itemId: 'two', reasons: ['otherCondition'], points: near(-17.5) },
    ]);
  });

  it('turned from looked at to measured, with readings that say failed: named as measured', () => {
    const record = {
      ...RECORD,
      answers: { ...RECORD.answers, one: { kind: 'readings', values: { gap: 2 }, evidence: 'measured' } },
    } satisfies Judged;
    const measure = {
      inputs: [{ id: 'gap', title: 'Gap', unit: 'mm' as const, least: 0, most: 100 }],
      figure: 'value' as const,
      unit: 'mm',
      bands: { any: [{ grade: 'sound' as const, from: 5 }, { grade: 'failed' as const }] },
    };
    const moves = movesTo({ items: [{ ...ONE, kind: 'measure', measure }, TWO] }, record);
    expect(moves.items).toMatchObject([{ itemId: 'one', reasons: ['nowMeasured'], now: { grade: 'failed' } }]);
  });

  it('withheld by a stop item: moved, with the items named and no points', () => {
    const record = { ...RECORD, answers: { ...RECORD.answers, swollen: graded('failed') } };
    const swollen = rawItem({ id: 'swollen', zone: 'case', stop: true });
    expect(movesTo({ items: [ONE, TWO, swollen] }, record)).toMatchObject({
      moved: true,
      lowChange: null,
      items: [{ itemId: 'swollen', reasons: ['addedSettled'], points: null }],
      shares: { count: 0, points: null },
    });
  });
});

describe('for any two definitions and any record', () => {
  const pairArb = fc
    .tuple(definitionArb, definitionArb)
    .chain(([one, other]) => recordArb(one).map((record) => ({ one, other, record })));

  it('the listed moves sum to the change of the low end of the score within 1e-9, and back again', () => {
    let summed = 0;
    fc.assert(
      fc.property(pairArb, ({ one, other, record }) => {
        const [was, now] = [under(one, record), under(other, record)];
        const [forth, back] = [scoreMoves(was, now), scoreMoves(now, was)];
        const [before, after] = [was.grading.score, now.grading.score];
        if (before === null || after === null) {
          expect([forth.lowChange, back.lowChange]).toEqual([null, null]);
          return;
        }
        summed++;
        expect(sumOf(forth)).toBeCloseTo(after.low - before.low, 9);
        expect(sumOf(back)).toBeCloseTo(before.low - after.low, 9);
        expect(forth.moved).toBe(back.moved);
      }),
      { numRuns: 2000 },
    );
    expect(summed).toBeGreaterThan(500);
  });

  it('nothing moves from a definition to itself', () => {
    fc.assert(
      fc.property(pairArb, ({ one, record }) => {
        expect(scoreMoves(under(one, record), under(one, record))).toMatchObject({
          moved: false,
          items: [],
          hazards: [],
        });
      }),
      { numRuns: 500 },
    );
  });
});
