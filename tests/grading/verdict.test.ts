import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { Answer } from '../../src/schema/answer.ts';
import { graded } from './answer-with.ts';
import { deepFreeze } from './deep-freeze.ts';
import { definitionWith, rawItem, smallDefinition } from './small-definition.ts';

const SOUND: Record<string, Answer> = Object.fromEntries(
  smallDefinition.items.map(({ id }) => [id, graded('sound')] as const),
);

function verdictOf(answers: Record<string, Answer>, facts: Record<string, string> = { 'metal-case': 'yes' }) {
  const record = deepFreeze({ route: 'whole' as const, facts, answers: { ...SOUND, ...answers } });
  return gradeRecord(smallDefinition, record, { fuseFits: true }).verdict;
}

const both = (name: string) => ({ low: name, high: name, settled: true });

describe('verdict of a settled record', () => {
  it('is no finding when everything is sound, and still so when everything is passable', () => {
    expect(verdictOf({})).toEqual(both('noFinding'));
    expect(verdictOf({ 'lid-fit': graded('passable'), vents: graded('passable') })).toEqual(both('noFinding'));
  });

  it.each([
    ['weak, without a hazard', { 'lid-fit': graded('weak') }],
    ['failed, without a hazard', { tidy: graded('failed') }],
    ['at medium risk (II × D)', { spacing: graded('weak') }],
    ['failed at medium risk (III × C)', { 'metal-floor': graded('failed') }],
    ['at medium risk under two hazards', { spacing: graded('weak'), sensor: graded('weak') }],
  ])('is mind the list with a finding %s', (_, answers) => {
    expect(verdictOf(answers)).toEqual(both('mindTheList'));
  });

  it('is not as it comes when the outside remedies clear every high and serious risk (fuse: II × B high)', () => {
    expect(verdictOf({ 'current-cut': graded('failed') })).toEqual(both('notAsItComes'));
  });

  it('is workshop first when it takes the workshop ones as well (vents weak: I × D serious)', () => {
    expect(verdictOf({ vents: graded('weak') })).toEqual(both('workshopFirst'));
    expect(verdictOf({ vents: graded('weak'), 'current-cut': graded('failed') })).toEqual(both('workshopFirst'));
  });

  it('is keep out of use when no listed remedy clears one of them (sensor failed: II × C serious)', () => {
    expect(verdictOf({ sensor: graded('failed') })).toEqual(both('keepOut'));
    expect(verdictOf({ sensor: graded('failed'), vents: graded('weak') })).toEqual(both('keepOut'));
  });

  it('is stop when a stop item failed, whatever else was found', () => {
    expect(verdictOf({ swollen: graded('failed') })).toEqual(both('stop'));
    expect(verdictOf({ swollen: graded('failed'), sensor: graded('failed') })).toEqual(both('stop'));
  });

  it('counts a remedy only for what it leaves: left at weak, a severity I item stays serious', () => {
    const items = [rawItem({ id: 'vents', zone: 'case', safety: true, hazard: 'relief', severity: 1 })];
    const settledTo = (leaves: 'weak' | 'passable') =>
      definitionWith({
        zones: [{ id: 'case', title: 'Case', weight: 1 }],
        items,
        remedies: [{ id: 'cut', text: 'Cut.', reach: 'workshop', settles: [{ item: 'vents', leaves }] }],
      });
    const record = { route: 'short', facts: {}, answers: { vents: graded('failed') } } as const;
    expect(gradeRecord(settledTo('weak'), record).verdict).toEqual(both('keepOut'));
    expect(gradeRecord(settledTo('passable'), record).verdict).toEqual(both('workshopFirst'));
  });
});

describe('verdict of an open record', () => {
  const open: Answer = { kind: 'notSeen', reason: 'under potting' };

  it('is judged at the worst and the best outcome left: the vents open', () => {
    expect(verdictOf({ vents: open })).toEqual({ low: 'workshopFirst', high: 'noFinding', settled: false });
  });

  it('is settled when the open item cannot change it: the sensor failed, the vents open', () => {
    expect(verdictOf({ sensor: graded('failed'), vents: open })).toEqual(both('keepOut'));
  });

  it('takes a finding under an open fact for none at the high end', () => {
    expect(verdictOf({ 'metal-floor': graded('failed') }, {})).toEqual({
      low: 'mindTheList',
      high: 'noFinding',
      settled: false,
    });
  });

  it('takes a failed stop item under an open fact for possible: the range stays', () => {
    const item = rawItem({
      id: 'reversed',
      zone: 'case',
      stop: true,
      grades: { sound: 'S.', failed: 'F.' },
      onlyIf: { fact: 'metal-case', is: 'yes' },
    });
    const definition = definitionWith({
      zones: [{ id: 'case', title: 'Case', weight: 1 }],
      items: [rawItem({ id: 'lid', zone: 'case' }), item],
      remedies: [],
    });
    const answers = { lid: graded('sound'), reversed: graded('failed') };
    const grade = (facts: Record<string, string>) => gradeRecord(definition, { route: 'short', facts, answers });
    expect(grade({})).toMatchObject({ stop: 'possible', score: { low: 50, high: 100 }, verdict: { low: 'stop' } });
    expect(grade({ 'metal-case': 'no' })).toMatchObject({ stop: 'none', score: { low: 100, high: 100 } });
    expect(grade({ 'metal-case': 'yes' })).toMatchObject({ stop: 'failed', score: null, verdict: both('stop') });
  });

  it('does not stop on a weak stop item', () => {
    const definition = definitionWith({
      zones: [{ id: 'case', title: 'Case', weight: 1 }],
      items: [rawItem({ id: 'dent', zone: 'case', stop: true })],
      remedies: [],
    });
    const record = { route: 'short', facts: {}, answers: { dent: graded('weak') } } as const;
    expect(gradeRecord(definition, record)).toMatchObject({ stop: 'none', verdict: both('mindTheList') });
  });
});
