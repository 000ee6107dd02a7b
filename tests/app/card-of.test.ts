import { expect, it } from 'vitest';
import { bareCard, cardOf } from '../../src/app/card-of.ts';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { PackRecord } from '../../src/record/pack-record.ts';
import { CLOSED_ONCE, CLOSED_TWICE, REVISING } from '../sheet/closed-pack.ts';
import { HUT_CHECKLIST, hutRecord } from '../sheet/hut-pack.ts';

const cardWith = (given: Partial<PackRecord>) => {
  const record = hutRecord(given);
  return cardOf(record, gradeRecord(HUT_CHECKLIST, record));
};

it.each([
  [1, CLOSED_ONCE],
  [2, CLOSED_TWICE],
] as const)('says of a closed sheet that it is closed as revision %d', (revision, given) => {
  expect(cardWith(given).closed).toBe(revision);
});

it.each([
  ['never closed', {}],
  ['being revised', REVISING],
] as const)('says nothing of a sheet %s, as the cards of earlier versions', (_, given) => {
  expect(cardWith(given)).not.toHaveProperty('closed');
});

it('judges nothing where the checklist is not here, but keeps name, photo count and revision 1', () => {
  expect(bareCard(hutRecord(CLOSED_ONCE))).toMatchObject({
    name: 'Wren 24',
    score: null,
    photoCount: 0,
    closed: 1,
  });
});
