import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { ItemResult } from '../../src/grading/grading.ts';
import { type GradedBy, type ItemChanges, itemChanges } from '../../src/grading/item-changes.ts';
import type { Answer } from '../../src/schema/answer.ts';
import type { Checklist } from '../../src/schema/checklist.ts';
import type { Outcome } from '../../src/schema/grade.ts';
import { doesNotApply, graded, notSeen } from './answer-with.ts';
import { definitionArb } from './arbitrary-definition.ts';
import { recordArb } from './arbitrary-record.ts';
import { deepFreeze } from './deep-freeze.ts';
import { smallDefinition } from './small-definition.ts';

const RUNS = { numRuns: 1000 };

function gradedBy(answers: Record<string, Answer>, given: Partial<Given> = {}): GradedBy {
  const { definition = smallDefinition, facts = { 'metal-case': 'no' }, route = 'whole' } = given;
  return deepFreeze({ definition, grading: gradeRecord(definition, deepFreeze({ route, facts, answers })) });
}
interface Given {
  definition: Checklist;
  facts: Record<string, string>;
  route: 'short' | 'whole';
}

/** The lists by item id, and the counts. */
function inShort(changes: ItemChanges) {
  const ids = (list: ItemChanges['gone']) => list.map(({ itemId }) => itemId);
  const { appeared, worse, better, gone, notLookedAgain, foundBoth, ...counts } = changes;
  return {
    appeared: ids(appeared),
    worse: ids(worse),
    better: ids(better),
    gone: ids(gone),
    notLookedAgain: ids(notLookedAgain),
    foundBoth: ids(foundBoth),
    ...counts,
  };
}

describe('the nine items of the small definition, from one record to another', () => {
  const was = gradedBy({
    'lid-fit': graded('weak'),
    label: graded('sound'),
    vents: graded('failed'),
    swollen: graded('sound'),
    spacing: graded('failed'),
    'current-cut': graded('passable'),
    tidy: graded('weak'),
  });
  const now = gradedBy({
    'lid-fit': graded('passable'),
    label: doesNotApply(),
    vents: graded('weak'),
    swollen: graded('sound'),
    spacing: notSeen(),
    'current-cut': graded('failed'),
    sensor: graded('weak'),
    tidy: graded('failed'),
  });

  // By hand: lid-fit weak → passable gone; label sound → does not apply; vents failed → weak better; swollen same;
  // spacing failed → not seen; metal-floor excluded by its fact both times: same; current-cut passable → failed new;
  // sensor unanswered → weak new; tidy weak → failed worse.
  it('has 2 new, 1 worse, 1 better, 1 gone, 1 not looked at again, 2 the same and 1 that applies to one only', () => {
    expect(inShort(itemChanges(was, now))).toEqual({
      comparedCount: 9,
      appeared: ['current-cut', 'sensor'],
      worse: ['tidy'],
      better: ['vents'],
      gone: ['lid-fit'],
      notLookedAgain: ['spacing'],
      foundBoth: [],
      sameCount: 2,
      appliesToOneCount: 1,
      openCount: 0,
      onlyThenCount: 0,
      onlyNowCount: 0,
    });
  });

  it('tells a new finding that was passable then from one nobody had looked at', () => {
    const [cut, sensor] = itemChanges(was, now).appeared;
    expect(cut?.was).toMatchObject({ grade: 'passable', because: 'answered' });
    expect(sensor?.was).toMatchObject({ grade: null, because: 'unanswered' });
  });

  it('swapped: the new one that was sound is gone, the one not looked at then is not looked at again', () => {
    expect(inShort(itemChanges(now, was))).toMatchObject({
      appeared: ['lid-fit', 'spacing'],
      worse: ['vents'],
      better: ['tidy'],
      gone: ['current-cut'],
      notLookedAgain: ['sensor'],
    });
  });
});

describe('an open item', () => {
  it('is never taken for gone: a finding then, unanswered, not seen or under an open fact now', () => {
    const was = gradedBy({ spacing: graded('weak'), label: graded('failed') });
    for (const answers of [{}, { spacing: notSeen(), label: notSeen() }]) {
      expect(inShort(itemChanges(was, gradedBy(answers)))).toMatchObject({
        gone: [],
        notLookedAgain: ['label', 'spacing'],
      });
    }
  });

  it('given a grade under an open fact counts as graded: failed both times is the same, weak from failed better', () => {
    const under = (grade: 'weak' | 'failed') => gradedBy({ 'metal-floor': graded(grade) }, { facts: {} });
    expect(inShort(itemChanges(under('failed'), under('failed')))).toMatchObject({ sameCount: 1, openCount: 8 });
    expect(inShort(itemChanges(under('failed'), under('weak')))).toMatchObject({ better: ['metal-floor'] });
  });

  it('sound then and open now counts as open: nothing is said of it', () => {
    expect(inShort(itemChanges(gradedBy({ vents: graded('sound') }), gradedBy({})))).toMatchObject({
      comparedCount: 9,
      openCount: 8,
      sameCount: 1,
    });
  });
});

describe('an item that can only be weak or failed', () => {
  /** Label as if its sentences were those two alone, or its readings left those two. */
  const label = (because: ItemResult['because'], grade: 'weak' | 'failed' | null = null): GradedBy => {
    const { definition, grading } = gradedBy({});
    const possible: Outcome[] = grade === null ? ['weak', 'failed'] : [grade];
    const items = grading.items.map((one) => (one.itemId === 'label' ? { ...one, grade, possible, because } : one));
    return { definition, grading: { ...grading, items } };
  };

  it.each(['unanswered', 'notSeen', 'error', 'factOpen'] as const)(
    'is no finding while nobody looked: %s',
    (because) => {
      expect(inShort(itemChanges(gradedBy({ label: graded('sound') }), label(because)))).toMatchObject({
        appeared: [],
      });
      expect(inShort(itemChanges(label(because), gradedBy({ label: graded('sound') })))).toMatchObject({ gone: [] });
      expect(inShort(itemChanges(label('answered', 'failed'), label(because)))).toMatchObject({
        notLookedAgain: ['label'],
      });
    },
  );

  it('is a finding once readings have left those two, and then found both times, neither better nor worse', () => {
    expect(inShort(itemChanges(gradedBy({ label: graded('sound') }), label('measured')))).toMatchObject({
      appeared: ['label'],
    });
    const both = itemChanges(label('answered', 'failed'), label('measured'));
    expect(inShort(both)).toMatchObject({ foundBoth: ['label'], worse: [], better: [], openCount: 8 - both.sameCount });
    expect(inShort(itemChanges(label('measured'), label('answered', 'weak')))).toMatchObject({ foundBoth: ['label'] });
  });
});

describe('records that ask different items', () => {
  it('a short route beside a whole one: 6 of 9 compared, 3 asked then only', () => {
    const whole = gradedBy({ tidy: graded('failed') });
    const short = gradedBy({}, { route: 'short' });
    expect(inShort(itemChanges(whole, short))).toMatchObject({ comparedCount: 6, onlyThenCount: 3, onlyNowCount: 0 });
    expect(inShort(itemChanges(short, whole))).toMatchObject({ comparedCount: 6, onlyThenCount: 0, onlyNowCount: 3 });
  });

  it('an item whose sentences are other ones is marked, and only that one', () => {
    const items = smallDefinition.items.map((item) =>
      item.id === 'vents' ? { ...item, grades: { ...item.grades, weak: 'One vent partly covered.' } } : item,
    );
    const answers = { vents: graded('weak'), 'lid-fit': graded('weak') };
    const changes = itemChanges(gradedBy({}), gradedBy(answers, { definition: { ...smallDefinition, items } }));
    expect(changes.appeared.map(({ itemId, reworded }) => [itemId, reworded])).toEqual([
      ['lid-fit', false],
      ['vents', true],
    ]);
  });
});

describe('for any definition and any two records of it', () => {
  const twoArb = definitionArb.chain((definition) =>
    fc.tuple(recordArb(definition), recordArb(definition)).map(([one, other]) => ({
      one: { definition, grading: gradeRecord(definition, one) },
      other: { definition, grading: gradeRecord(definition, other) },
    })),
  );

  it('finds nothing when a record is compared with itself', () => {
    fc.assert(
      fc.property(twoArb, ({ one }) => {
        const { appeared, worse, better, gone, notLookedAgain, appliesToOneCount } = itemChanges(one, one);
        expect([appeared, worse, better, gone, notLookedAgain].flat()).toEqual([]);
        expect(appliesToOneCount).toBe(0);
      }),
      RUNS,
    );
  });

  it('turns worse into better and new into gone or not looked at again when the two are swapped', () => {
    fc.assert(
      fc.property(twoArb, ({ one, other }) => {
        const forth = inShort(itemChanges(one, other));
        const back = inShort(itemChanges(other, one));
        expect(back).toEqual({
          ...forth,
          appeared: back.appeared,
          gone: back.gone,
          notLookedAgain: back.notLookedAgain,
          worse: forth.better,
          better: forth.worse,
          onlyThenCount: forth.onlyNowCount,
          onlyNowCount: forth.onlyThenCount,
        });
        expect([...back.gone, ...back.notLookedAgain].toSorted()).toEqual(forth.appeared.toSorted());
        expect([...forth.gone, ...forth.notLookedAgain].toSorted()).toEqual(back.appeared.toSorted());
      }),
      RUNS,
    );
  });

  it('puts every item that both ask in exactly one place', () => {
    fc.assert(
      fc.property(twoArb, ({ one, other }) => {
        const { appeared, worse, better, gone, notLookedAgain, foundBoth, ...counts } = itemChanges(one, other);
        const listed = [appeared, worse, better, gone, notLookedAgain, foundBoth].flat().map(({ itemId }) => itemId);
        expect(new Set(listed).size).toBe(listed.length);
        expect(listed.length + counts.sameCount + counts.appliesToOneCount + counts.openCount).toBe(
          counts.comparedCount,
        );
      }),
      RUNS,
    );
  });
});
