import { describe, expect, it } from 'vitest';
import { agreementOf, settledGrades } from '../../src/grading/agreement.ts';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import { shownItems } from '../../src/grading/shown-items.ts';
import type { SecondAnswer } from '../../src/schema/second-reading.ts';
import { hutPhoto } from '../sheet/hut-pack.ts';
import { doesNotApply, graded, notSeen } from './answer-with.ts';
import { deepFreeze } from './deep-freeze.ts';
import { definitionWith, rawItem, smallDefinition } from './small-definition.ts';

const IDS = smallDefinition.items.map(({ id }) => id);
const second = (grade: 'sound' | 'passable' | 'weak' | 'failed'): SecondAnswer => ({ kind: 'grade', grade });

// First: lid weak, label does not apply, vents told sound (counts as passable), swollen not seen, spacing open,
// metal-floor excluded, current-cut failed, sensor sound, tidy passable.
const GRADING = deepFreeze(
  gradeRecord(smallDefinition, {
    route: 'whole',
    facts: { 'metal-case': 'no' },
    answers: {
      'lid-fit': graded('weak'),
      label: doesNotApply(),
      vents: graded('sound', 'told'),
      swollen: notSeen(),
      'current-cut': graded('failed'),
      sensor: graded('sound'),
      tidy: graded('passable'),
    },
  }),
);

describe('nine items, one of each kind of pair', () => {
  const found = agreementOf(
    GRADING,
    deepFreeze({
      answers: {
        'lid-fit': second('weak'),
        label: second('sound'),
        vents: second('passable'),
        swollen: second('sound'),
        spacing: second('failed'),
        'metal-floor': second('sound'),
        'current-cut': second('passable'),
        sensor: { kind: 'cannotTell' },
        tidy: second('sound'),
      },
    }),
    IDS,
  );

  it('pairs 4, 2 of them the same: told sound counts as passable, as in the record', () => {
    expect(found.pairCount).toBe(4);
    expect(found.sameCount).toBe(2);
    expect(found.counts).toEqual({
      sound: { sound: 0, passable: 0, weak: 0, failed: 0 },
      passable: { sound: 1, passable: 1, weak: 0, failed: 0 },
      weak: { sound: 0, passable: 0, weak: 1, failed: 0 },
      failed: { sound: 0, passable: 1, weak: 0, failed: 0 },
    });
  });

  it('lists 2 differences, two grades apart before one', () => {
    expect(found.farApartCount).toBe(1);
    expect(found.differences).toEqual([
      { itemId: 'current-cut', first: 'failed', second: 'passable', steps: 2 },
      { itemId: 'tidy', first: 'passable', second: 'sound', steps: 1 },
    ]);
  });

  it('counts 5 left out, each once, the first reader’s reason before the second’s', () => {
    expect(found.leftOut).toEqual({
      firstNotSeen: 1,
      firstDoesNotApply: 2,
      firstOpen: 1,
      secondCannotTell: 1,
      secondDoesNotApply: 0,
      secondNotAnswered: 0,
    });
  });

  // Found (1 + 1 + 2/3 + 1/3)/4 = 3/4. Rows: passable ½, weak ¼, failed ¼; columns: sound ¼, passable ½, weak ¼. By chance
  // ½·(⅙+½+⅙) + ¼·(1/12+⅓+¼) + ¼·(0+⅙+⅙) = 5/12 + 1/6 + 1/12 = 2/3. Kappa (3/4 − 2/3)/(1/3) = 1/4.
  it('comes to kappa 1/4', () => {
    expect(found.kappa?.kappa).toBeCloseTo(0.25, 12);
  });
});

it('counts what was shown and not answered, and what does not apply to the second; what was not shown counts nowhere', () => {
  const found = agreementOf(GRADING, { answers: { sensor: { kind: 'doesNotApply' } } }, ['lid-fit', 'sensor', 'tidy']);
  expect(found).toMatchObject({ pairCount: 0, kappa: null, leftOut: { secondDoesNotApply: 1, secondNotAnswered: 2 } });
  expect(Object.values(found.leftOut).reduce((sum, count) => sum + count, 0)).toBe(3);
});

it('counts nothing of an item that the route does not ask: 0 pairs, 0 left out', () => {
  const grading = gradeRecord(smallDefinition, { route: 'short', facts: {}, answers: { tidy: graded('sound') } });
  const found = agreementOf(grading, { answers: { tidy: second('sound') } }, ['tidy']);
  expect([found.pairCount, ...Object.values(found.leftOut)]).toEqual([0, 0, 0, 0, 0, 0, 0]);
});

describe('a reading that was finished', () => {
  const answers = deepFreeze({ 'lid-fit': second('weak'), tidy: second('sound'), spacing: second('sound') });
  const firstGrades = deepFreeze(settledGrades(GRADING));
  const changed = deepFreeze(
    gradeRecord(smallDefinition, {
      route: 'whole',
      facts: { 'metal-case': 'no' },
      answers: { 'lid-fit': graded('weak'), tidy: graded('sound'), spacing: graded('sound') },
    }),
  );

  it('keeps the 5 grades that counted then: none of what was open, not seen or did not apply', () => {
    expect(firstGrades).toEqual({
      'lid-fit': 'weak',
      vents: 'passable',
      'current-cut': 'failed',
      sensor: 'sound',
      tidy: 'passable',
    });
  });

  it('stays at 1 of 2 alike though a grade was made to agree since, says that 1 was changed, and takes in none graded since', () => {
    const then = agreementOf(GRADING, { answers, firstGrades }, IDS);
    const now = agreementOf(changed, { answers, firstGrades }, IDS);
    expect([then.pairCount, then.sameCount, then.changedSinceCount]).toEqual([2, 1, 0]);
    expect([now.pairCount, now.sameCount, now.changedSinceCount]).toEqual([2, 1, 1]);
    expect(now.counts).toEqual(then.counts);
    expect(agreementOf(changed, { answers }, IDS)).toMatchObject({ pairCount: 3, sameCount: 3, changedSinceCount: 0 });
  });

  it('counts the 3 items answered apart from the 9 shown', () => {
    expect(agreementOf(GRADING, { answers, firstGrades }, IDS).answeredCount).toBe(3);
  });
});

describe('which items can be told from photos', () => {
  const definition = definitionWith({
    items: [
      ...smallDefinition.items,
      rawItem({ id: 'warm', zone: 'case', state: 'loaded' }),
      rawItem({ id: 'hum', zone: 'case', state: 'loaded' }),
      rawItem({ id: 'dents', zone: 'case', state: 'arrival' }),
    ],
  });
  const photos = [
    hutPhoto(0, { zone: 'case' }),
    hutPhoto(1, { zone: 'case', itemIds: ['label', 'hum'] }),
    hutPhoto(2, { zone: 'cells' }),
    hutPhoto(3, { zone: 'arrival', itemIds: ['sensor'] }),
  ];
  const shownOf = (facts: Record<string, string>) =>
    shownItems(definition, { photos }, gradeRecord(definition, { route: 'whole', facts, answers: {} })).map(
      ({ itemId, photoIds }) => [itemId, photoIds.map((id) => Number(id))],
    );

  it('eight: by a photo of their own, else by one of their zone; what shows while running by its own only', () => {
    expect(shownOf({ 'metal-case': 'no' })).toEqual([
      ['lid-fit', [0, 1]],
      ['label', [1]],
      ['vents', [2]],
      ['swollen', [2]],
      ['spacing', [2]],
      ['sensor', [3]],
      ['hum', [1]],
      ['dents', [0, 1, 3]],
    ]);
  });

  it('one more where the fact does not exclude it', () => {
    expect(shownOf({ 'metal-case': 'yes' }).map(([id]) => id)).toContain('metal-floor');
  });
});
