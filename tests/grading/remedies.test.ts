import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { Grading } from '../../src/grading/grading.ts';
import type { Answer } from '../../src/schema/answer.ts';
import type { Grade } from '../../src/schema/grade.ts';
import { doesNotApply, graded } from './answer-with.ts';
import { deepFreeze } from './deep-freeze.ts';
import { definitionWith, rawItem } from './small-definition.ts';

type Parts = Parameters<typeof definitionWith>[0];

/** Two items of weight 1 under one hazard of severity II and one of weight 2 under none: Build = 25·(a + b) + 50·c. */
const PARTS = {
  zones: [{ id: 'case', title: 'Case', weight: 1 }],
  items: [
    rawItem({ id: 'a', zone: 'case', hazard: 'heat', severity: 2, mayNotApply: ['none is fitted'] }),
    rawItem({ id: 'b', zone: 'case', hazard: 'heat', severity: 2 }),
    rawItem({ id: 'c', zone: 'case', weight: 2 }),
  ],
} satisfies Parts;

function remedy(id: string, reach: 'outside' | 'workshop', settles: Record<string, Grade>) {
  return { id, text: 'Do it.', reach, settles: Object.entries(settles).map(([item, leaves]) => ({ item, leaves })) };
}

function grade(remedies: NonNullable<Parts['remedies']>, answers: Record<string, Answer>): Grading {
  const record = deepFreeze({ route: 'short' as const, facts: {}, answers });
  return gradeRecord(definitionWith({ ...PARTS, remedies }), record);
}

const ids = ({ remedies }: Grading) => remedies.map(({ remedyId }) => remedyId);

describe('which remedies are listed', () => {
  const leavesPassable = [remedy('fix', 'outside', { c: 'passable' })];

  it.each([
    ['sound', []],
    ['passable', []],
    ['weak', ['fix']],
    ['failed', ['fix']],
  ] as const)('an item found %s against a remedy that leaves it passable: %j', (found, listed) => {
    expect(ids(grade(leavesPassable, { a: graded('sound'), b: graded('sound'), c: graded(found) }))).toEqual(listed);
  });

  it('lists one for an open item, which may still turn out worse', () => {
    expect(ids(grade(leavesPassable, { a: graded('sound'), b: graded('sound') }))).toEqual(['fix']);
  });

  it('lists none for an item that does not apply', () => {
    expect(ids(grade([remedy('fix', 'outside', { a: 'sound' })], { a: doesNotApply() }))).toEqual([]);
  });

  it('names only those of its items that it betters', () => {
    const grading = grade([remedy('fix', 'outside', { a: 'sound', b: 'sound' })], {
      a: graded('sound'),
      b: graded('weak'),
      c: graded('sound'),
    });
    expect(grading.remedies.map(({ itemIds }) => itemIds)).toEqual([['b']]);
  });
});

describe('what a remedy leaves', () => {
  // Found passable 0.75 is better than left weak 0.35: Build stays 25·(1 + 1) + 50·0.75 = 87.5
  it('is the better of found and left, outcome by outcome', () => {
    const grading = grade([remedy('fix', 'outside', { b: 'weak', c: 'weak' })], {
      a: graded('sound'),
      b: graded('failed'),
      c: graded('passable'),
    });
    // 25·(1 + 0.35) + 37.5 = 71.25 · 0.95 (II × D) = 67.6875
    expect(grading.after.outside).toEqual({ low: expect.closeTo(67.6875, 9), high: expect.closeTo(67.6875, 9) });
  });

  // open c: low 0 → 0.75, high 1 stays; 50 / 100 → 87.5 / 100
  it('lifts the low end of an open item and leaves its high end: 50–100 becomes 87.5–100', () => {
    const grading = grade([remedy('fix', 'outside', { c: 'passable' })], { a: graded('sound'), b: graded('sound') });
    expect(grading.score).toEqual({ low: 50, high: 100 });
    expect(grading.after.outside).toEqual({ low: 87.5, high: 100 });
  });

  // a open, may not apply: credit 0 and 1 before and after; only its risk goes. Low 75·0.70 = 52.5 → 75
  it('does not settle whether an item applies: its credit stays 0 and 1, its risk goes', () => {
    const grading = grade([remedy('fix', 'outside', { a: 'sound' })], { b: graded('sound'), c: graded('sound') });
    expect(grading.score).toEqual({ low: expect.closeTo(52.5, 9), high: 100 });
    expect(grading.after.outside).toEqual({ low: 75, high: 100 });
  });
});

describe('gains under one hazard', () => {
  const answers = { a: graded('failed'), b: graded('failed'), c: graded('sound') };
  const remedies = [remedy('fix-a', 'workshop', { a: 'passable' }), remedy('fix-b', 'workshop', { b: 'sound' })];

  // Build 50, factor 0.70 (II × C): 35. fix-b: 75·0.70 = 52.5, gain 17.5; then fix-a: 93.75·1, gain 41.25
  // fix-a first would gain (68.75 − 50)·0.70 = 13.125, so fix-b comes first. The hazard is cleared by the second:
  // 93.75·(1 − 0.70) = 28.125 of its gain, and 18.75·0.70 = 13.125 by credit.
  it('come with the remedy that clears its last finding, not with each: 17.5, then 41.25 of which 28.125 by heat', () => {
    expect(grade(remedies, answers).remedies).toEqual([
      {
        remedyId: 'fix-b',
        reach: 'workshop',
        itemIds: ['b'],
        gain: near(17.5),
        buildGain: near(17.5),
        hazardGains: [],
        cumulative: near(52.5),
        clearsHazardIds: [],
      },
      {
        remedyId: 'fix-a',
        reach: 'workshop',
        itemIds: ['a'],
        gain: near(41.25),
        buildGain: near(13.125),
        hazardGains: [{ hazardId: 'heat', gain: near(28.125) }],
        cumulative: near(93.75),
        clearsHazardIds: ['heat'],
      },
    ]);
  });

  it('are counted once: a second remedy for the same items gains 0 and comes last', () => {
    const twice = [
      remedy('weaker', 'outside', { b: 'passable' }),
      remedy('whole', 'outside', { a: 'sound', b: 'sound' }),
    ];
    // whole: 100 − 35 = 65
    expect(grade(twice, answers).remedies.map(({ remedyId, gain }) => [remedyId, gain])).toEqual([
      ['whole', near(65)],
      ['weaker', near(0)],
    ]);
  });
});

describe('printed order', () => {
  const answers = { a: graded('sound'), b: graded('weak'), c: graded('weak') };

  it('has outside before workshop even where the workshop one gains more', () => {
    const remedies = [remedy('inside', 'workshop', { c: 'sound' }), remedy('outside', 'outside', { b: 'passable' })];
    const grading = grade(remedies, answers);
    expect(ids(grading)).toEqual(['outside', 'inside']);
    // 25·1.75 + 50·0.35 = 61.25 at factor 1; 25·1.75 + 50 = 93.75
    expect(grading.after).toEqual({ outside: near(61.25), workshop: near(93.75) });
  });

  it('has equal gains in definition order', () => {
    const remedies = [remedy('one', 'outside', { c: 'sound' }), remedy('two', 'outside', { c: 'sound' })];
    expect(ids(grade(remedies, answers))).toEqual(['one', 'two']);
    expect(ids(grade(remedies.toReversed(), answers))).toEqual(['two', 'one']);
  });

  it('has a remedy whose gain is at the high end only after one that gains at both, before one that gains nothing', () => {
    const fuse = { ...remedy('fuse', 'outside', { b: 'sound' }), needs: 'fuseFits' as const };
    const remedies = [remedy('idle', 'outside', { c: 'passable' }), fuse, remedy('sure', 'outside', { c: 'sound' })];
    const open = { a: graded('sound'), b: graded('failed'), c: graded('weak') };
    expect(ids(grade(remedies, open))).toEqual(['sure', 'fuse', 'idle']);
  });
});

function near(value: number) {
  return { low: expect.closeTo(value, 9), high: expect.closeTo(value, 9) };
}
