import { expect, it } from 'vitest';
import { gradeWhenChanged } from '../../src/app/state/grade-when-changed.ts';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import { NO_LIVE_TESTS } from '../../src/record/fold-live-tests.ts';
import type { Answer } from '../../src/schema/answer.ts';
import type { Grade } from '../../src/schema/grade.ts';
import { builtIn } from '../checklists/built-in.ts';

const [one, two] = builtIn.items;
const [fact] = builtIn.facts;
if (!one || !two || !fact) throw new Error('the checklist has two items and a fact');

const seen = (grade: Grade): Answer => ({ kind: 'grade', grade, evidence: 'seen' });
const whole = {
  route: 'whole' as const,
  facts: { [fact.id]: 'yes' },
  answers: { [one.id]: seen('weak') },
  nameplate: { continuousCurrentA: 100 },
  tests: NO_LIVE_TESTS,
};
const trip = { id: 'a'.repeat(32), currentA: 200, heldForS: 4, opened: true, made: 'first' };
const tripped = { ...whole, tests: { ...NO_LIVE_TESTS, trips: [trip] } };

it('grades once for a record and an equal copy of it', () => {
  const grade = gradeWhenChanged(builtIn);
  const first = grade(whole);
  expect(first).toEqual(gradeRecord(builtIn, whole));
  expect(grade(structuredClone(whole))).toBe(first);
});

it('does not grade again when a test that was just written gets its stamp', () => {
  const grade = gradeWhenChanged(builtIn);
  const first = grade(tripped);
  expect(grade({ ...tripped, tests: { ...NO_LIVE_TESTS, trips: [{ ...trip, made: 'second' }] } })).toBe(first);
});

it('grades again when a claim changes that a test is held against: 200 A over 100 A counts, over 150 A it does not', () => {
  const grade = gradeWhenChanged(builtIn);
  const before = grade(tripped);
  const claimed = { ...tripped, nameplate: { continuousCurrentA: 150 } };
  expect(grade(claimed)).toEqual(gradeRecord(builtIn, claimed));
  expect(grade(claimed)).not.toEqual(before);
});

it.each([
  ['a trip of 4 s', tripped],
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
