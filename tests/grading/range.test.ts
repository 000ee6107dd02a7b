import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { Answer } from '../../src/schema/answer.ts';
import { doesNotApply, graded } from './answer-with.ts';
import { definitionWith, rawItem, smallDefinition } from './small-definition.ts';

const oneZone = { zones: [{ id: 'case', title: 'Case', weight: 1 }], remedies: [] };
const mayFall = ['none is fitted'];

describe('nothing answered', () => {
  const grading = gradeRecord(smallDefinition, { route: 'whole', facts: {}, answers: {} });

  // relief I × B 0.40, chafe II × C 0.70, overload II × B 0.40, heat II × C (stated) 0.70: 0.0784; Build low 0
  it('ranges from 0 to 100 with a factor from 0.0784 to 1 and no settled share', () => {
    expect(grading.score).toEqual({ low: 0, high: 100 });
    expect(grading.factor).toEqual({ low: expect.closeTo(0.0784, 12), high: 1 });
    expect(grading.settledShareFrac).toBe(0);
    expect(grading.findings).toEqual([]);
  });

  it('stops at the low end and finds nothing at the high one', () => {
    expect(grading.verdict).toEqual({ low: 'stop', high: 'noFinding', settled: false });
    expect(grading.openSafetyItemIds).toEqual(['vents', 'current-cut', 'sensor']);
  });
});

describe('an item that may still not apply', () => {
  const items = [
    rawItem({ id: 'sure', zone: 'case', weight: 3 }),
    rawItem({ id: 'perhaps', zone: 'case', onlyIf: { fact: 'metal-case', is: 'yes' }, hazard: 'heat', severity: 2 }),
  ];
  const definition = definitionWith({ ...oneZone, items });
  const grade = (facts: Record<string, string>, answers: Record<string, Answer>) =>
    gradeRecord(definition, { route: 'short', facts, answers });
  const answers = { sure: graded('passable'), perhaps: graded('failed') };

  // low (3·0.75 + 0)/4 = 56.25 · 0.70 (II × C) = 39.375; high (2.25 + 1)/4 = 81.25 · 1
  it('counts credit 0 and 1, its risk at the low end only: 39.375–81.25', () => {
    expect(grade({}, answers).score).toEqual({ low: expect.closeTo(39.375, 9), high: expect.closeTo(81.25, 9) });
    expect(grade({}, answers).hazards.find(({ hazardId }) => hazardId === 'heat')?.risk).toEqual({
      low: 'serious',
      high: null,
    });
    expect(grade({}, answers).findings).toMatchObject([{ itemId: 'perhaps', sure: false }]);
  });

  it('counts the same bounds 0 and 1 when it is found sound, though never a risk: 56.25–81.25', () => {
    const sound = grade({}, { ...answers, perhaps: graded('sound') });
    expect(sound.score).toEqual({ low: 56.25, high: 81.25 });
  });

  // (2.25 + 0)/4 = 56.25, · 0.70 = 39.375
  it('is 39.375 once the fact lets it apply, and 75 once the fact excludes it', () => {
    expect(grade({ 'metal-case': 'yes' }, answers).score?.low).toBeCloseTo(39.375, 9);
    expect(grade({ 'metal-case': 'no' }, answers).score).toEqual({ low: 75, high: 75 });
  });
});

describe('a zone that falls away', () => {
  const definition = definitionWith({
    zones: [
      { id: 'case', title: 'Case', weight: 1 },
      { id: 'bms', title: 'BMS', weight: 3 },
    ],
    items: [
      rawItem({ id: 'lid', zone: 'case' }),
      rawItem({ id: 'board', zone: 'bms', weight: 4, mayNotApply: mayFall }),
      rawItem({ id: 'switch', zone: 'bms', mayNotApply: mayFall }),
    ],
    remedies: [],
  });
  const grade = (answers: Record<string, Answer>) => gradeRecord(definition, { route: 'short', facts: {}, answers });

  // case 0.35 at W 0.25; bms 0 or 1 at W 0.75
  it('counts 0 and 1 while all its items may: 8.75–83.75', () => {
    expect(grade({ lid: graded('weak') }).score).toEqual({
      low: expect.closeTo(8.75, 9),
      high: expect.closeTo(83.75, 9),
    });
  });

  it('leaves its weight to the other once they do: 35, with no q and no share of its own', () => {
    const grading = grade({ lid: graded('weak'), board: doesNotApply(), switch: doesNotApply() });
    expect(grading.score).toEqual({ low: 35, high: 35 });
    expect(grading.zones).toMatchObject([
      { zoneId: 'case', weightFrac: 1, q: { low: 0.35, high: 0.35 } },
      { zoneId: 'bms', weightFrac: 0, q: null, settledCount: 2, worst: null },
    ]);
    expect(grading.settledShareFrac).toBe(1);
  });

  // Σ W·(settled / not surely inapplicable) = 0.25·0/1 + 0.75·4/4: the switch surely falls away
  it('leaves a surely inapplicable item out of the settled share: 0.75', () => {
    expect(grade({ board: graded('failed'), switch: doesNotApply() }).settledShareFrac).toBeCloseTo(0.75, 12);
  });
});

describe('nothing to score', () => {
  const items = [
    rawItem({ id: 'one', zone: 'case', mayNotApply: mayFall }),
    rawItem({ id: 'two', zone: 'case', mayNotApply: mayFall, hazard: 'heat', severity: 1 }),
  ];
  const grading = gradeRecord(definitionWith({ ...oneZone, items }), {
    route: 'short',
    facts: {},
    answers: { one: doesNotApply(), two: doesNotApply() },
  });

  it('has no Build, score, after-scores, or ledger, and is settled', () => {
    expect(grading).toMatchObject({
      build: null,
      score: null,
      after: { outside: null, workshop: null },
      ledger: null,
      settled: true,
      settledShareFrac: 1,
      factor: { low: 1, high: 1 },
      verdict: { low: 'noFinding', high: 'noFinding', settled: true },
    });
  });

  it('is not an empty score: while one of the two is open the range is 0–100', () => {
    const open = gradeRecord(definitionWith({ ...oneZone, items }), {
      route: 'short',
      facts: {},
      answers: { one: doesNotApply() },
    });
    expect(open.score).toEqual({ low: 0, high: 100 });
  });
});

it('uses the credits of the definition: four items of one weight at 0.9, 0.6, 0.3, 0.1 build 47.5', () => {
  const grades = ['sound', 'passable', 'weak', 'failed'] as const;
  const definition = definitionWith({
    ...oneZone,
    credits: { sound: 0.9, passable: 0.6, weak: 0.3, failed: 0.1 },
    items: grades.map((grade) => rawItem({ id: grade, zone: 'case' })),
  });
  const answers = Object.fromEntries(grades.map((grade) => [grade, graded(grade)]));
  expect(gradeRecord(definition, { route: 'short', facts: {}, answers }).build?.low).toBeCloseTo(47.5, 9);
});
