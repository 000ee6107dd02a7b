import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { Grading, NextQuestion } from '../../src/grading/grading.ts';
import { lookHereNext } from '../../src/grading/look-here-next.ts';
import type { Checklist } from '../../src/schema/checklist.ts';
import type { Outcome } from '../../src/schema/grade.ts';
import { VERDICTS } from '../../src/schema/verdict.ts';
import { doesNotApply, graded, notSeen } from './answer-with.ts';
import { type GradedRecord, sceneArb } from './arbitrary-record.ts';
import { deepFreeze } from './deep-freeze.ts';
import { definitionWith, rawItem } from './small-definition.ts';

const ONE_ZONE = { zones: [{ id: 'case', title: 'Case', weight: 1 }], remedies: [] };

describe('look here next', () => {
  it('is found as by grading every trial record whole', () => {
    fc.assert(
      fc.property(sceneArb, ({ definition, record }) => {
        const grading = gradeRecord(definition, record);
        const plain = grading.stop === 'failed' ? null : plainNext(definition, record, grading);
        expect(lookHereNext(definition, record)).toEqual(
          plain && {
            ...plain,
            meanWidthPoints: expect.closeTo(plain.meanWidthPoints, 9),
            narrowsByPoints: expect.closeTo(plain.narrowsByPoints, 9),
          },
        );
      }),
      { numRuns: 1000 },
    );
  });

  // a: weight 3, no hazard. b: weight 1, severity II, not safety; none answered, no remedies: low end keep out.
  // Steps now 4 (keepOut … noFinding = 5 − 1). After a: each of 4 outcomes; b open keeps keepOut at the low end;
  //   a sound, passable: high noFinding, 4 steps; weak, failed: high mindTheList, 3 steps; mean 3.5
  // After b: sound, passable: low mindTheList (a failed), high noFinding: 1; weak: mindTheList both: 0;
  //   failed: keepOut both: 0; mean 0.5
  // Widths after b: sound 25 to 100 = 75; passable 18.75 to 93.75 = 75; weak 0.95·(8.75 to 83.75) = 71.25;
  //   failed 0.7·(0 to 75) = 52.5; mean 68.4375; now 0 to 100, so narrower by 31.5625
  it('prefers the question that settles the verdict, though another narrows the range more', () => {
    const items = [
      rawItem({ id: 'a', zone: 'case', weight: 3 }),
      rawItem({ id: 'b', zone: 'case', hazard: 'heat', severity: 2 }),
    ];
    const next = lookHereNext(definitionWith({ ...ONE_ZONE, items }), { route: 'short', facts: {}, answers: {} });
    expect(next).toEqual({
      kind: 'item',
      id: 'b',
      meanVerdictSteps: 0.5,
      meanWidthPoints: expect.closeTo(68.4375, 9),
      narrowsByPoints: expect.closeTo(31.5625, 9),
    });
  });

  it('takes the heavier of two items that decide the verdict alike, and the first of two alike in all', () => {
    const items = (weights: number[]) =>
      weights.map((weight, place) => rawItem({ id: `item-${place}`, zone: 'case', weight }));
    const nextOf = (weights: number[]) =>
      lookHereNext(definitionWith({ ...ONE_ZONE, items: items(weights) }), { route: 'short', facts: {}, answers: {} })
        ?.id;
    expect(nextOf([1, 2, 1])).toBe('item-1');
    expect(nextOf([1, 2, 2])).toBe('item-1');
    expect(nextOf([3, 3, 3, 3, 3, 3, 3])).toBe('item-0');
  });

  it('asks an open fact before the item already answered under it', () => {
    const items = [
      rawItem({ id: 'lid', zone: 'case' }),
      rawItem({ id: 'floor', zone: 'case', onlyIf: { fact: 'metal-case', is: 'yes' } }),
    ];
    const answers = { lid: graded('sound'), floor: graded('weak') };
    const next = lookHereNext(definitionWith({ ...ONE_ZONE, items }), { route: 'short', facts: {}, answers });
    // Either choice settles all: {weak} or {does not apply}. Now (1 + 0)/2 to (1 + 1)/2: 50 points.
    expect(next).toEqual({
      kind: 'fact',
      id: 'metal-case',
      meanVerdictSteps: 0,
      meanWidthPoints: 0,
      narrowsByPoints: 50,
    });
  });

  // The item: of sound, passable, weak, failed, does not apply, weak and failed leave {mind the list, no finding}: 2/5.
  // The fact: of yes and no, yes leaves the same: 1/2.
  it('asks an item under an open fact before the fact where that leaves less: 0.4 steps against 0.5', () => {
    const items = [
      rawItem({ id: 'lid', zone: 'case' }),
      rawItem({ id: 'floor', zone: 'case', onlyIf: { fact: 'metal-case', is: 'yes' } }),
    ];
    const answers = { lid: graded('sound') };
    const next = lookHereNext(definitionWith({ ...ONE_ZONE, items }), { route: 'short', facts: {}, answers });
    expect(next).toMatchObject({ kind: 'item', id: 'floor', meanVerdictSteps: 0.4 });
  });

  it('does not ask a fact on which nothing asked still hangs', () => {
    const items = [
      rawItem({ id: 'lid', zone: 'case' }),
      rawItem({ id: 'floor', zone: 'case', route: 'whole', onlyIf: { fact: 'metal-case', is: 'yes' } }),
    ];
    const definition = definitionWith({ ...ONE_ZONE, items });
    const next = (route: 'short' | 'whole', answers: GradedRecord['answers']) =>
      lookHereNext(definition, { route, facts: {}, answers });
    expect(next('short', { lid: graded('sound') })).toBeNull();
    expect(next('whole', { lid: graded('sound'), floor: graded('weak') })?.id).toBe('metal-case');
  });

  it('takes a trial that fails a stop item as leaving 0 steps and 0 points', () => {
    const items = [
      rawItem({ id: 'swollen', zone: 'case', stop: true, grades: { sound: 'S.', failed: 'F.' } }),
      rawItem({ id: 'lid', zone: 'case', grades: { sound: 'S.', failed: 'F.' } }),
    ];
    const next = lookHereNext(definitionWith({ ...ONE_ZONE, items }), { route: 'short', facts: {}, answers: {} });
    // sound: lid open, mindTheList to noFinding, 50 to 100; failed: nothing left. Means 0.5 and 25; now 100.
    expect(next).toEqual({
      kind: 'item',
      id: 'swollen',
      meanVerdictSteps: 0.5,
      meanWidthPoints: 25,
      narrowsByPoints: 75,
    });
  });

  it('still names an item that was not seen: it is open', () => {
    const items = [rawItem({ id: 'lid', zone: 'case' })];
    const record = { route: 'short', facts: {}, answers: { lid: notSeen() } } as const;
    expect(lookHereNext(definitionWith({ ...ONE_ZONE, items }), record)?.id).toBe('lid');
  });
});

/** DESIGN §5 word by word: one whole grading for every outcome of every open item and every choice of every open fact. */
function plainNext(definition: Checklist, record: GradedRecord, now: Grading): NextQuestion | null {
  const open = now.items.filter(({ possible }) => possible.length > 1);
  const facts = definition.facts
    .filter(({ id }) => record.facts[id] === undefined)
    .filter(({ id }) =>
      definition.items.some((item) => item.onlyIf?.fact === id && open.some((o) => o.itemId === item.id)),
    )
    .map(({ id, choices }) => ({
      kind: 'fact' as const,
      id,
      trials: choices.map((choice) =>
        gradeRecord(definition, { ...record, facts: { ...record.facts, [id]: choice.id } }),
      ),
    }));
  const items = open.map(({ itemId: id, possible, grade }) => ({
    kind: 'item' as const,
    id,
    trials: possible.map((outcome) => gradeRecord(...trialOf({ definition, record, itemId: id, outcome, grade }))),
  }));
  const means = [...facts, ...items].map(({ kind, id, trials }) => ({
    kind,
    id,
    meanVerdictSteps: trials.reduce((sum, trial) => sum + stepsOf(trial), 0) / trials.length,
    meanWidthPoints: trials.reduce((sum, trial) => sum + widthOf(trial), 0) / trials.length,
  }));
  const least = means.toSorted(
    (one, other) =>
      one.meanVerdictSteps - other.meanVerdictSteps ||
      (Math.abs(one.meanWidthPoints - other.meanWidthPoints) < 1e-9 ? 0 : one.meanWidthPoints - other.meanWidthPoints),
  )[0];
  return least === undefined ? null : { ...least, narrowsByPoints: widthOf(now) - least.meanWidthPoints };
}

/** The item answered with the outcome. "Does not apply" is offered for the trial where only a fact could bring it. */
function trialOf(trial: {
  definition: Checklist;
  record: GradedRecord;
  itemId: string;
  outcome: Outcome;
  grade: Outcome | null;
}): [Checklist, GradedRecord] {
  const { definition, record, itemId, outcome, grade } = trial;
  if (outcome === grade) return [definition, record];
  const answer = outcome === 'doesNotApply' ? doesNotApply() : graded(outcome);
  const items = definition.items.map((item) =>
    item.id === itemId && outcome === 'doesNotApply' ? { ...item, mayNotApply: ['for the trial'] } : item,
  );
  return [{ ...definition, items }, deepFreeze({ ...record, answers: { ...record.answers, [itemId]: answer } })];
}

function stepsOf({ verdict }: Grading): number {
  return VERDICTS.indexOf(verdict.high) - VERDICTS.indexOf(verdict.low);
}

function widthOf({ score }: Grading): number {
  return score === null ? 0 : score.high - score.low;
}
