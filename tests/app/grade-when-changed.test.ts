import { expect, it } from 'vitest';
import { gradeWhenChanged } from '../../src/app/state/grade-when-changed.ts';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { Answer } from '../../src/schema/answer.ts';
import type { Grade } from '../../src/schema/grade.ts';
import { builtIn } from '../checklists/built-in.ts';

const [one, two] = builtIn.items;
const [fact] = builtIn.facts;
if (!one || !two || !fact) throw new Error('the checklist has two items and a fact');

const seen = (grade: Grade): Answer => ({ kind: 'grade', grade, evidence: 'seen' });
const whole = { route: 'whole' as const, facts: { [fact.id]: 'yes' }, answers: { [one.id]: seen('weak') } };

it('grades once for a record and an equal copy of it', () => {
  const grade = gradeWhenChanged(builtIn);
  const first = grade(whole);
  expect(first).toEqual(gradeRecord(builtIn, whole));
  expect(grade(structuredClone(whole))).toBe(first);
});

it.each([
  ['another grade', { ...whole, answers: { [one.id]: seen('sound') } }],
  ['one answer more', { ...whole, answers: { ...whole.answers, [two.id]: seen('sound') } }],
  ['an answer less', { ...whole, answers: {} }],
  ['the same answer on another item', { ...whole, answers: { [two.id]: seen('weak') } }],
  ['another choice of a fact', { ...whole, facts: { [fact.id]: 'no' } }],
  ['the short route', { ...whole, route: 'short' as const }],
])('grades again for %s, and for the way back', (_, changed) => {
  const grade = gradeWhenChanged(builtIn);
  const before = grade(whole);
  const after = grade(changed);
  expect(after).toEqual(gradeRecord(builtIn, changed));
  expect(after).not.toEqual(before);
  expect(grade(whole)).toEqual(before);
});
