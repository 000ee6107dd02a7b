import fc from 'fast-check';
import { expect, it } from 'vitest';
import { gradeRecord } from '../../../src/grading/grade-record.ts';
import type { Grading, ItemResult } from '../../../src/grading/grading.ts';
import type { Nameplate } from '../../../src/schema/nameplate.ts';
import { VERDICTS } from '../../../src/schema/verdict.ts';
import { builtIn } from '../../checklists/built-in.ts';
import { deepFreeze } from '../deep-freeze.ts';
import { type Drawn, roundArb, someAndOneMoreArb, testsFrom, trialArb } from './arbitrary-trials.ts';

/** Properties of DESIGN §5 with grades that come of live tests; figures lie on and about the checklist's limits. */
const RUNS = { numRuns: 500 };
const EPS = 1e-9;
const PLATE: Nameplate = { continuousCurrentA: 100, chargeCurrentA: 50, cellsInSeries: 4, ratedCapacityAh: 100 };
const someOfPlate = fc.subarray(Object.entries(PLATE)).map((fields): Nameplate => Object.fromEntries(fields));
const plateArb: fc.Arbitrary<Nameplate> = fc.oneof({ weight: 4, arbitrary: fc.constant(PLATE) }, someOfPlate);
const factsArb = fc.record(
  { 'main-fuse-fitted': fc.constantFrom('yes', 'no'), 'data-port': fc.constantFrom('yes', 'no') },
  { requiredKeys: [] },
);
const listArb = fc.array(trialArb, { maxLength: 8 });
const BEST_FIRST = ['sound', 'passable', 'weak', 'failed'];

interface Pack {
  plate: Nameplate;
  facts: Record<string, string>;
}
const packArb: fc.Arbitrary<Pack> = fc.record({ plate: plateArb, facts: factsArb }) as fc.Arbitrary<Pack>;

function graded({ plate, facts }: Pack, list: readonly Drawn[]): Grading {
  const record = { route: 'whole' as const, facts, answers: {}, nameplate: plate, tests: testsFrom(list) };
  return gradeRecord(builtIn, deepFreeze(record));
}

it('leaves every item an outcome, of its own grades only, and no computation fails', () => {
  let derivedCount = 0;
  fc.assert(
    fc.property(packArb, listArb, (pack, list) => {
      for (const { itemId, possible, because, measured } of graded(pack, list).items) {
        const item = builtIn.items.find(({ id }) => id === itemId);
        if (item === undefined) throw new Error(`no item ${itemId}`);
        const own = [...Object.keys(item.grades), 'doesNotApply'];
        expect(because).not.toBe('error');
        expect(possible.length).toBeGreaterThan(0);
        expect(possible.filter((outcome) => !own.includes(outcome))).toEqual([]);
        if (measured !== null) derivedCount += 1;
      }
    }),
    RUNS,
  );
  expect(derivedCount).toBeGreaterThan(RUNS.numRuns);
});

it('keeps score and verdict with tests inside those without', () => {
  fc.assert(
    fc.property(packArb, listArb, (pack, list) => {
      const without = graded(pack, []);
      const withTests = graded(pack, list);
      expect(orWithheld(withTests).low).toBeGreaterThanOrEqual(orWithheld(without).low - EPS);
      expect(orWithheld(withTests).high).toBeLessThanOrEqual(orWithheld(without).high + EPS);
      expect(rankOf(withTests.verdict.low)).toBeGreaterThanOrEqual(rankOf(without.verdict.low));
      expect(rankOf(withTests.verdict.high)).toBeLessThanOrEqual(rankOf(without.verdict.high));
    }),
    RUNS,
  );
});

it('gives the same whatever the order in which the tests were entered', () => {
  fc.assert(
    fc.property(
      packArb,
      listArb,
      fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
      (pack, list, draws) => {
        const shuffled = list
          .map((one) => ({ one, at: draws.next().value as number }))
          .toSorted((a, b) => a.at - b.at)
          .map(({ one }) => one);
        expect(outcomes(graded(pack, shuffled))).toEqual(outcomes(graded(pack, list)));
      },
    ),
    RUNS,
  );
});

it('never grades better for one more test than was possible before', () => {
  fc.assert(
    fc.property(packArb, someAndOneMoreArb, (pack, { some, more }) => {
      const before = graded(pack, some);
      for (const [place, after] of graded(pack, [...some, more]).items.entries()) {
        const earlier = before.items[place];
        if (earlier === undefined) throw new Error('items are the same before and after');
        expect([after.itemId, bestRank(after) >= bestRank(earlier)]).toEqual([after.itemId, true]);
      }
    }),
    RUNS,
  );
});

it('holds, while cells of the one round are still to be read, every outcome that reading them can come to', () => {
  fc.assert(
    fc.property(packArb, roundArb, (pack, round) => {
      fc.pre(round.kind === 'cellSets' && round.value.cells.length > 1);
      const part = { ...round, value: { ...round.value, cells: round.value.cells.slice(0, -1) } } as Drawn;
      const before = graded(pack, [part]);
      for (const [place, after] of graded(pack, [round]).items.entries()) {
        const earlier: readonly string[] = before.items[place]?.possible ?? [];
        expect([after.itemId, after.possible.filter((outcome) => !earlier.includes(outcome))]).toEqual([
          after.itemId,
          [],
        ]);
      }
    }),
    RUNS,
  );
});

function bestRank({ possible }: ItemResult): number {
  return Math.min(...possible.map((outcome) => BEST_FIRST.indexOf(outcome)).filter((rank) => rank >= 0));
}

function outcomes({ items }: Grading): string[] {
  return items.map(({ itemId, possible, because }) => `${itemId} ${possible.join(' ')} ${because}`);
}

/** A withheld score counts as none. */
function orWithheld({ score }: Grading): { low: number; high: number } {
  return score ?? { low: 0, high: 0 };
}

function rankOf(verdict: Grading['verdict']['low']): number {
  return VERDICTS.indexOf(verdict);
}
