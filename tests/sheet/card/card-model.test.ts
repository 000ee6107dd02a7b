import { expect, it } from 'vitest';
import { gradeRecord } from '../../../src/grading/grade-record.ts';
import { cardModel, defaultFindings } from '../../../src/sheet/card/card-model.ts';
import type { SheetInput } from '../../../src/sheet/model/sheet-context.ts';
import { CLOSED_ONCE, REVISING } from '../closed-pack.ts';
import { HUT_CHECKLIST, hutPhoto, hutRecord, LUG_NOTE } from '../hut-pack.ts';

function hutInput(given: Parameters<typeof hutRecord>[0] = {}): SheetInput {
  const record = hutRecord(given);
  return {
    definition: HUT_CHECKLIST,
    definitionSha256: 'c'.repeat(64),
    record,
    grading: gradeRecord(HUT_CHECKLIST, record),
    appVersion: '0.1.0',
    units: 'metric',
    locale: 'en',
    utcOffsetMinutes: 60,
  };
}
const LABEL_WEAK = { kind: 'grade', grade: 'weak', evidence: 'seen' } as const;
const ANSWERS = hutRecord().answers;

it('says name, sample, its 3 marks, and the day of the newest entry: 25 November by a clock one hour ahead', () => {
  const card = cardModel(hutInput());
  expect(card).toMatchObject({
    name: 'Wren 24',
    sample: 'sample 1',
    marks: ['not closed', 'invented demo', 'draft checklist'],
  });
  expect(card.caution.replaceAll('\u00a0', ' ')).toBe('One sample, as found on 25 November 2026. No certification.');
  expect(card.disclosure).toContain('a shop');
});

it('puts the worst risk first: the failed lug (serious) before the label (no hazard), though only the label has a photo', () => {
  const photos = [hutPhoto(1, { itemIds: ['case-label'] })];
  expect(defaultFindings(hutInput({ photos })).map(({ itemId, photoId }) => [itemId, photoId])).toEqual([
    ['main-lug', null],
    ['case-label', photos[0]?.id],
  ]);
});

it('prefers the one with a photo at equal risk: tidy runs before the label', () => {
  const answers = { ...ANSWERS, tidy: LABEL_WEAK };
  const order = (photos: ReturnType<typeof hutPhoto>[]) =>
    defaultFindings(hutInput({ answers, photos })).map(({ itemId }) => itemId);
  expect(order([])).toEqual(['main-lug', 'case-label', 'tidy']);
  expect(order([hutPhoto(1, { itemIds: ['tidy'] })])).toEqual(['main-lug', 'tidy', 'case-label']);
});

it('shows the sentence of the grade, or the note when that is chosen, and leaves out what is no finding any more', () => {
  const words = (chosen: 'sentence' | 'note') =>
    cardModel(hutInput(), [
      { itemId: 'main-lug', photoId: null, words: chosen },
      { itemId: 'swollen', photoId: null, words: chosen },
    ]).findings.map((finding) => finding.words);
  expect(words('sentence')).toEqual(['Strands end short of the barrel.']);
  expect(words('note')).toEqual([LUG_NOTE]);
});

it('cuts a note of 400 characters at a word to at most 320', () => {
  const note = 'strand '.repeat(57);
  const answers = { ...ANSWERS, 'main-lug': { kind: 'grade', grade: 'failed', evidence: 'seen', note } as const };
  const [finding] = cardModel(hutInput({ answers }), [{ itemId: 'main-lug', photoId: null, words: 'note' }]).findings;
  expect(finding?.words).toMatch(/strand…$/);
  expect(finding?.words.length).toBeLessThanOrEqual(320);
  expect(finding?.words.length).toBeGreaterThan(310);
});

it('counts 2 findings, of which any number may be shown', () => {
  expect(cardModel(hutInput())).toMatchObject({ findingCount: 2 });
  expect(cardModel(hutInput(), [])).toMatchObject({ findingCount: 2, findings: [] });
});

it('leaves a note of 199 characters whole, though each letter takes two code units', () => {
  const note = Array.from({ length: 40 }, () => '𝛀𝛀𝛀𝛀').join(' ');
  const answers = { ...ANSWERS, 'main-lug': { kind: 'grade', grade: 'failed', evidence: 'seen', note } as const };
  const [finding] = cardModel(hutInput({ answers }), [{ itemId: 'main-lug', photoId: null, words: 'note' }]).findings;
  expect(finding?.words).toBe(note);
});

it('has no mark of a closed sheet by a released checklist, and says of one reopened that revision 2 is in the making', () => {
  const marksOf = (standing: Partial<ReturnType<typeof hutRecord>>) =>
    cardModel({
      ...hutInput({ demo: false, ...standing }),
      definition: { ...HUT_CHECKLIST, status: 'released' },
    }).marks;
  expect(marksOf(CLOSED_ONCE)).toEqual([]);
  expect(marksOf(REVISING)).toEqual(['not closed: revision 2 in the making']);
});

it('withholds the score of a pack with a failed stop sign', () => {
  const answers = { ...ANSWERS, swollen: { kind: 'grade', grade: 'failed', evidence: 'seen' } as const };
  expect(cardModel(hutInput({ answers })).score).toMatchObject({ label: 'Score withheld', figures: '', range: null });
});
