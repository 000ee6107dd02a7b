import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { Grading } from '../../src/grading/grading.ts';
import { itemRisk } from '../../src/grading/item-risk.ts';
import { smallestRemedies } from '../../src/grading/remedies-smallest.ts';
import { EXACT_UP_TO, smallestCover } from '../../src/grading/smallest-cover.ts';
import type { Answer } from '../../src/schema/answer.ts';
import type { Checklist, Item } from '../../src/schema/checklist.ts';
import { GRADES, type Grade, gradeRank } from '../../src/schema/grade.ts';
import { graded } from './answer-with.ts';
import { sceneArb } from './arbitrary-record.ts';
import { deepFreeze } from './deep-freeze.ts';
import { definitionWith, rawItem } from './small-definition.ts';

const noPrice = () => null;

/** Safety items of severity II: failed is serious (II × B high), passable is none. */
const ITEMS = ['a', 'b', 'c'].map((id) => rawItem({ id, zone: 'case', safety: true, hazard: `h-${id}`, severity: 2 }));
const ALL_FAILED = { a: graded('failed'), b: graded('failed'), c: graded('failed') };

function remedy(id: string, reach: 'outside' | 'workshop', items: string, leaves: Grade = 'passable') {
  return { id, text: 'Do it.', reach, settles: [...items].map((item) => ({ item, leaves })) };
}

function smallest(
  remedies: Parameters<typeof definitionWith>[0]['remedies'],
  answers: Record<string, Answer> = ALL_FAILED,
  priceOf: (id: string) => number | null = noPrice,
) {
  const definition = definitionWith({
    zones: [{ id: 'case', title: 'Case', weight: 1 }],
    hazards: ['a', 'b', 'c'].map((id) => ({ id: `h-${id}`, title: id, harm: 'Harm.' })),
    facts: [],
    items: ITEMS,
    remedies: remedies ?? [],
  });
  const grading = gradeRecord(definition, deepFreeze({ route: 'short' as const, facts: {}, answers }));
  return smallestRemedies(definition, grading, priceOf);
}

describe('the smallest set, by hand', () => {
  it('is 1 workshop remedy that does all three, rather than 3 from outside', () => {
    const set = smallest([
      remedy('one', 'outside', 'a'),
      remedy('two', 'outside', 'b'),
      remedy('three', 'outside', 'c'),
      remedy('rebuild', 'workshop', 'abc'),
    ]);
    expect(set.low).toEqual({ remedyIds: ['rebuild'], unclearedHazardIds: [], isExact: true });
    expect(set.high).toEqual(set.low);
  });

  // Greedy takes `most` (two items) first and then needs two more; `left` and `right` do with two.
  it('is 2 where taking the one that does most first would come to 3', () => {
    const set = smallest([
      remedy('most', 'outside', 'ab'),
      remedy('left', 'outside', 'a'),
      remedy('right', 'outside', 'bc'),
    ]);
    expect(set.low.remedyIds).toHaveLength(2);
    expect(set.low.remedyIds).toContain('right');
  });

  it('takes the one from outside of two that do the same', () => {
    const set = smallest([remedy('inside', 'workshop', 'abc'), remedy('outside', 'outside', 'abc')]);
    expect(set.low.remedyIds).toEqual(['outside']);
  });

  it('takes the cheaper of two, 20 before 30, one with a price before one without, and the first of two alike', () => {
    const two = [remedy('one', 'outside', 'abc'), remedy('two', 'outside', 'abc')];
    expect(smallest(two, ALL_FAILED, (id) => (id === 'one' ? 30 : 20)).low.remedyIds).toEqual(['two']);
    expect(smallest(two, ALL_FAILED, (id) => (id === 'one' ? null : 500)).low.remedyIds).toEqual(['two']);
    expect(smallest(two).low.remedyIds).toEqual(['one']);
  });

  it('is empty where nothing is serious, and where a weak item is medium risk (II × D)', () => {
    const set = smallest([remedy('one', 'outside', 'a')], {
      a: graded('weak'),
      b: graded('sound'),
      c: graded('passable'),
    });
    expect(set.low).toEqual({ remedyIds: [], unclearedHazardIds: [], isExact: true });
  });

  it('needs 3 at the low end, where two open items are at their worst, and 1 at the high end', () => {
    const remedies = [remedy('one', 'outside', 'a'), remedy('two', 'outside', 'b'), remedy('three', 'workshop', 'c')];
    const set = smallest(remedies, { a: graded('failed') });
    expect(set.low.remedyIds).toEqual(['one', 'two', 'three']);
    expect(set.high.remedyIds).toEqual(['one']);
  });

  it('names the hazard that no remedy clears, and the 1 remedy that clears the others', () => {
    const set = smallest([remedy('one', 'outside', 'ab'), remedy('never', 'workshop', 'c', 'failed')]);
    expect(set.low).toEqual({ remedyIds: ['one'], unclearedHazardIds: ['h-c'], isExact: true });
  });

  it('counts a fuse at the high end only while it is not known whether one fits: 3 hazards stay at the low end, 1 remedy does at the high', () => {
    const fuse = { ...remedy('fuse', 'outside', 'abc'), needs: 'fuseFits' as const };
    const open = smallest([fuse]);
    expect(open.low).toEqual({ remedyIds: [], unclearedHazardIds: ['h-a', 'h-b', 'h-c'], isExact: true });
    expect(open.high.remedyIds).toEqual(['fuse']);
  });

  it('is exact for 20 remedies and says that it is not for 21', () => {
    const many = (count: number) => Array.from({ length: count }, (_, n) => remedy(`r-${n}`, 'workshop', 'abc'));
    expect(smallest(many(20)).low).toMatchObject({ remedyIds: ['r-0'], isExact: true });
    expect(smallest(many(21)).low).toMatchObject({ remedyIds: ['r-0'], isExact: false });
  });
});

describe('the smallest set, for any definition and record', () => {
  it('is the one that trying every subset finds, at both ends', () => {
    let [needing, several] = [0, 0];
    fc.assert(
      fc.property(sceneArb, fc.array(fc.option(fc.nat(3)), { minLength: 4, maxLength: 4 }), (scene, prices) => {
        const { definition, record } = scene;
        const grading = gradeRecord(definition, record, { fuseFits: [null, true, false][prices[0] ?? 0] ?? null });
        const priceOf = (id: string) => prices[definition.remedies.findIndex((one) => one.id === id)] ?? null;
        const found = smallestRemedies(definition, grading, priceOf);
        for (const end of ['low', 'high'] as const) {
          expect(found[end]).toEqual({ ...everySubset(end, definition, { grading, priceOf }), isExact: true });
          if (found[end].remedyIds.length > 0) needing += 1;
          if (found[end].remedyIds.length > 1) several += 1;
        }
        // The engine's own verdict, by another way: with the stop aside, "keep out" is "not all can be cleared".
        if (grading.stop === 'none' && grading.score !== null) {
          expect(found.low.unclearedHazardIds.length > 0).toBe(grading.verdict.low === 'keepOut');
        }
      }),
      { numRuns: 3000, seed: 5 },
    );
    expect(needing).toBeGreaterThan(100);
    expect(several).toBeGreaterThan(5);
  });
});

describe('smallestCover', () => {
  const optionArb = fc.record({ isCostly: fc.boolean(), price: fc.option(fc.nat(4)) });
  const sceneOf = (options: { isCostly: boolean; price: number | null }[]) =>
    fc.tuple(fc.constant(options), fc.array(fc.subarray([...options.keys()], { minLength: 1 }), { maxLength: 7 }));

  it('chooses what trying every subset of up to 9 options chooses', () => {
    fc.assert(
      fc.property(fc.array(optionArb, { minLength: 1, maxLength: 9 }).chain(sceneOf), ([options, needs]) => {
        const best = subsetsOf([...options.keys()])
          .filter((set) => needs.every((need) => need.some((place) => set.includes(place))))
          .reduce((one, other) => (isBetter(other, one, options) ? other : one));
        expect(smallestCover(needs, options)).toEqual({ places: best, isExact: true });
      }),
      { numRuns: 1000 },
    );
  });

  it('above 20 options still meets every need, and could drop none of those it chose', () => {
    const options = Array.from({ length: EXACT_UP_TO + 5 }, () => ({ isCostly: false, price: null }));
    fc.assert(
      fc.property(fc.array(fc.subarray([...options.keys()], { minLength: 1 }), { minLength: 1 }), (drawn) => {
        const needs = [...drawn, [...options.keys()]];
        const { places, isExact } = smallestCover(needs, options);
        const meets = (set: number[]) => needs.every((need) => need.some((place) => set.includes(place)));
        expect(isExact).toBe(false);
        expect(meets(places)).toBe(true);
        for (const place of places) expect(meets(places.filter((other) => other !== place))).toBe(false);
      }),
    );
  });

  it('refuses a need that nothing meets', () => {
    expect(() => smallestCover([[]], [])).toThrow(
      'smallestCover: every need must have an option that meets it, got none',
    );
  });
});

/** Straight from the words: every subset of the listed remedies, the hazards it leaves, the best of those that clear most. */
function everySubset(
  end: 'low' | 'high',
  definition: Checklist,
  { grading, priceOf }: { grading: Grading; priceOf: (id: string) => number | null },
) {
  const counted = grading.remedies.filter(
    (one) => one.ruledOut === undefined && (end === 'high' || one.open === undefined),
  );
  const ids = definition.remedies.map(({ id }) => id).filter((id) => counted.some((one) => one.remedyId === id));
  const leftBy = (done: readonly string[]) =>
    definition.hazards
      .filter(({ id }) => definition.items.some((item) => item.hazard === id && isSerious(item, done)))
      .map(({ id }) => id);
  const isSerious = (item: Item, done: readonly string[]): boolean => {
    const possible = grading.items.find(({ itemId }) => itemId === item.id)?.possible ?? [];
    const grades = GRADES.filter((grade) => possible.includes(grade));
    const found = end === 'low' ? grades.at(-1) : possible.includes('doesNotApply') ? undefined : grades[0];
    if (found === undefined) return false;
    const left = definition.remedies
      .filter(({ id }) => done.includes(id))
      .flatMap(({ settles }) => settles.filter((settled) => settled.item === item.id).map(({ leaves }) => leaves));
    const rank = Math.min(...[found, ...left].map(gradeRank));
    return ['serious', 'high'].includes(itemRisk(item, GRADES[rank] ?? 'failed')?.risk ?? 'none');
  };
  const unclearedHazardIds = leftBy(ids);
  const options = ids.map((id) => ({
    isCostly: definition.remedies.find((one) => one.id === id)?.reach === 'workshop',
    price: priceOf(id),
  }));
  const best = subsetsOf([...ids.keys()])
    .filter((set) => leftBy(set.map((place) => ids[place] ?? '')).length === unclearedHazardIds.length)
    .reduce((one, other) => (isBetter(other, one, options) ? other : one));
  return { remedyIds: best.map((place) => ids[place] ?? ''), unclearedHazardIds };
}

function subsetsOf(places: number[]): number[][] {
  return places.reduce<number[][]>((sets, place) => sets.concat(sets.map((set) => [...set, place])), [[]]);
}

/** The rule of preference, written out as one chain of comparisons. */
function isBetter(one: number[], other: number[], options: { isCostly: boolean; price: number | null }[]): boolean {
  const costly = (set: number[]) => set.filter((place) => options[place]?.isCostly).length;
  const unpriced = (set: number[]) => set.filter((place) => options[place]?.price === null).length;
  const price = (set: number[]) => set.reduce((sum, place) => sum + (options[place]?.price ?? 0), 0);
  if (one.length !== other.length) return one.length < other.length;
  if (costly(one) !== costly(other)) return costly(one) < costly(other);
  if (unpriced(one) !== unpriced(other)) return unpriced(one) < unpriced(other);
  if (price(one) !== price(other)) return price(one) < price(other);
  const at = one.findIndex((place, index) => place !== other[index]);
  return at >= 0 && (one[at] ?? 0) < (other[at] ?? 0);
}
