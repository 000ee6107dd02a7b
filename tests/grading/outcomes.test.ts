import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { ItemResult } from '../../src/grading/grading.ts';
import type { Answer } from '../../src/schema/answer.ts';
import { doesNotApply, graded, notSeen } from './answer-with.ts';
import { deepFreeze } from './deep-freeze.ts';
import { definitionWith, rawItem, smallDefinition } from './small-definition.ts';

const ALL = ['sound', 'passable', 'weak', 'failed'];

describe('what an answer leaves', () => {
  it.each([
    ['nothing', undefined, 'unanswered'],
    ['a note alone', { kind: 'open', note: 'scratched?' }, 'unanswered'],
    ['not seen', notSeen(), 'notSeen'],
  ] as const)('leaves all four grades after %s', (_, answer, because) => {
    expect(resultOf('lid-fit', { answer })).toMatchObject({ possible: ALL, settled: false, grade: null, because });
  });

  it.each(['sound', 'passable', 'weak', 'failed'] as const)('leaves one outcome of a graded item: %s', (grade) => {
    expect(resultOf('lid-fit', { answer: graded(grade) })).toMatchObject({
      possible: [grade],
      settled: true,
      grade,
      because: 'answered',
      evidence: 'seen',
    });
  });

  it('leaves "does not apply" possible only where the item offers a reason', () => {
    expect(resultOf('label', {}).possible).toEqual(['sound', 'weak', 'failed', 'doesNotApply']);
    expect(resultOf('lid-fit', {}).possible).toEqual(ALL);
    expect(resultOf('label', { answer: doesNotApply() })).toMatchObject({
      possible: ['doesNotApply'],
      settled: true,
      because: 'doesNotApply',
    });
  });
});

describe('told', () => {
  it('counts told sound on a safety item as passable and says so', () => {
    expect(resultOf('vents', { answer: graded('sound', 'told') })).toMatchObject({
      possible: ['passable'],
      grade: 'passable',
      evidence: 'told',
      loweredByTold: true,
    });
  });

  it.each(['passable', 'weak', 'failed'] as const)('keeps told %s on a safety item', (grade) => {
    expect(resultOf('vents', { answer: graded(grade, 'told') })).toMatchObject({ grade, loweredByTold: false });
  });

  it.each(['seen', 'measured'] as const)('keeps sound on a safety item that was %s', (evidence) => {
    expect(resultOf('vents', { answer: graded('sound', evidence) })).toMatchObject({ grade: 'sound' });
  });

  it('keeps told sound on an item that is no safety item', () => {
    expect(resultOf('lid-fit', { answer: graded('sound', 'told') })).toMatchObject({
      grade: 'sound',
      loweredByTold: false,
    });
  });

  it('counts told sound as passable, credit 0.75, where the item has no passable sentence of its own', () => {
    const item = rawItem({ id: 'only', zone: 'case', safety: true, grades: { sound: 'S.', failed: 'F.' } });
    const grading = gradeRecord(definitionWith({ items: [item], remedies: [] }), {
      route: 'short',
      facts: {},
      answers: { only: graded('sound', 'told') },
    });
    expect(grading.score).toEqual({ low: 75, high: 75 });
  });
});

describe('facts', () => {
  const answer = graded('weak');

  it('leaves an answered item {weak, does not apply} while its fact is open', () => {
    expect(resultOf('metal-floor', { answer })).toMatchObject({
      possible: ['weak', 'doesNotApply'],
      settled: false,
      grade: 'weak',
      because: 'factOpen',
    });
  });

  it('leaves an unanswered item all it has and "does not apply" while its fact is open', () => {
    expect(resultOf('metal-floor', {})).toMatchObject({
      possible: ['sound', 'weak', 'failed', 'doesNotApply'],
      because: 'unanswered',
    });
  });

  it('leaves the answer alone once the fact lets it apply', () => {
    expect(resultOf('metal-floor', { answer, facts: { 'metal-case': 'yes' } })).toMatchObject({
      possible: ['weak'],
      settled: true,
      because: 'answered',
    });
  });

  it('leaves only "does not apply" once the fact excludes it; the answer counts for nothing but stays in the record', () => {
    const record = { route: 'whole', facts: { 'metal-case': 'no' }, answers: { 'metal-floor': answer } } as const;
    const grading = gradeRecord(smallDefinition, deepFreeze(record));
    expect(grading.items.find(({ itemId }) => itemId === 'metal-floor')).toMatchObject({
      possible: ['doesNotApply'],
      settled: true,
      grade: null,
      because: 'factExcludes',
    });
    expect(grading.findings).toEqual([]);
    expect(record.answers['metal-floor']).toEqual(answer);
  });

  it('takes a choice the definition does not offer as no choice: the fact stays open', () => {
    expect(resultOf('metal-floor', { answer, facts: { 'metal-case': 'perhaps' } }).because).toBe('factOpen');
  });
});

describe('what cannot be read', () => {
  it.each([
    [
      'a grade the item does not offer',
      'label',
      graded('passable'),
      /label must have one of its own grades, got passable/,
    ],
    [
      'a grade that is a word of the language',
      'lid-fit',
      { ...graded('sound'), grade: 'constructor' },
      /got constructor/,
    ],
    ['not applying without a reason offered', 'vents', doesNotApply(), /vents must be graded/],
    ['an unknown kind of answer', 'vents', { kind: 'guess' }, /known kind of answer, got \{"kind":"guess"\}/],
    ['null', 'vents', null, /null/],
  ] as const)('is one error outcome with all outcomes left: %s', (_, itemId, answer, message) => {
    const result = resultOf(itemId, { answer: answer as unknown as Answer });
    expect(result).toMatchObject({
      because: 'error',
      settled: false,
      grade: null,
      possible: resultOf(itemId, {}).possible,
      error: expect.stringMatching(message),
    });
  });

  it('leaves the other eight items as they are', () => {
    const answers = { vents: doesNotApply(), 'lid-fit': graded('sound') };
    const { items } = gradeRecord(smallDefinition, { route: 'whole', facts: {}, answers });
    expect(items.map(({ because }) => because)).toEqual([
      'answered',
      'unanswered',
      'error',
      'unanswered',
      'unanswered',
      'unanswered',
      'unanswered',
      'unanswered',
      'unanswered',
    ]);
  });

  it('does not take what every object inherits for an answer: an item called "constructor" is unanswered', () => {
    const definition = definitionWith({ items: [rawItem({ id: 'constructor', zone: 'case' })], remedies: [] });
    const { items } = gradeRecord(definition, { route: 'short', facts: {}, answers: {} });
    expect(items.map(({ because }) => because)).toEqual(['unanswered']);
  });
});

describe('not looked at singly', () => {
  it('counts 1 of two such answers when the other does not apply after all', () => {
    const unlooked = { ...graded('sound'), unlooked: true };
    const record = { route: 'whole', answers: { 'lid-fit': unlooked, 'metal-floor': unlooked } } as const;
    expect(gradeRecord(smallDefinition, { ...record, facts: { 'metal-case': 'yes' } }).unlookedCount).toBe(2);
    const excluded = gradeRecord(smallDefinition, { ...record, facts: { 'metal-case': 'no' } });
    expect(excluded.unlookedCount).toBe(1);
    expect(excluded.items.filter(({ unlooked: flag }) => flag).map(({ itemId }) => itemId)).toEqual(['lid-fit']);
  });
});

function resultOf(
  itemId: string,
  { answer, facts = {} }: { answer?: Answer | undefined; facts?: Record<string, string> },
): ItemResult {
  const answers = answer === undefined ? {} : { [itemId]: answer };
  const { items } = gradeRecord(smallDefinition, deepFreeze({ route: 'whole', facts, answers }));
  const result = items.find((item) => item.itemId === itemId);
  if (result === undefined) throw new Error(`no such item: ${itemId}`);
  return result;
}
