import { describe, expect, it } from 'vitest';
import type { RemedyNote } from '../../src/schema/remedy-note.ts';
import { figuresOf } from '../../src/sheet/model/sealed/figures-of.ts';
import type { Sheet } from '../../src/sheet/model/sheet.ts';
import { writePdf } from '../../src/sheet/pdf/write-pdf.ts';
import { workTime } from '../../src/text/remedies.ts';
import { HUT_CHECKLIST, hutRecord, hutSheet } from './hut-pack.ts';
import { FONTS, noPhotos } from './pdf-inputs.ts';
import { readPdf } from './read-pdf.ts';

const withParts = {
  ...HUT_CHECKLIST,
  remedies: HUT_CHECKLIST.remedies.map((one) => ({ ...one, parts: 'One lug', timeMin: { from: 20, to: 45 } })),
};
const blocks = (sheet: Sheet) => sheet.sections.find(({ id }) => id === 'remedies')?.blocks ?? [];
const takes = (sheet: Sheet) => blocks(sheet).flatMap((block) => (block.kind === 'remedy' ? [block.takes] : []));
const withNotes = (remedyNotes: Record<string, RemedyNote>) => hutRecord({ remedyNotes });

describe('what remedies take, on the sheet', () => {
  it('is nothing where neither checklist nor tester says it: 2 remedies, 0 lines, no costs', () => {
    expect(takes(hutSheet())).toEqual([[], []]);
    expect(blocks(hutSheet()).map(({ kind }) => kind)).toEqual(['paragraph', 'remedy', 'remedy', 'figures']);
  });

  it('is the checklist’s parts and time, and the tester’s in their place with cost and note', () => {
    const note = { price: 24.5, pricedOn: '2026-11-20', parts: 'Two lugs', timeMin: 90, note: 'With heat-shrink.' };
    const sheet = hutSheet(withNotes({ 'new-lug': note }), withParts);
    // Printed order: outside first, so the label before the lug.
    expect(takes(sheet)).toEqual([
      ['parts: One lug', 'work: 20 to 45\u00a0min'],
      ['parts: Two lugs', 'work: 90\u00a0min', 'cost: EUR\u00a024.50 on 20\u00a0November\u00a02026'],
    ]);
    expect(blocks(sheet)[2]).toMatchObject({ note: { label: 'The tester notes', text: 'With heat-shrink.' } });
  });

  it('says of 24.50 USD beside a pack in EUR that it is not counted', () => {
    const [, lug] = takes(hutSheet(withNotes({ 'new-lug': { price: 24.5, currency: 'USD' } })));
    expect(lug).toEqual(['cost: USD\u00a024.50', 'in another currency than the nameplate’s: not counted']);
  });

  it('adds 3 and 24.50 to 27.50, as at least 24.50 while remedy 1 has no price', () => {
    const figures = (notes: Record<string, RemedyNote>) => JSON.stringify(blocks(hutSheet(withNotes(notes))).slice(4));
    expect(figures({ 'new-lug': { price: 24.5 }, 'own-label': { price: 3 } })).toContain('remedies: EUR\u00a027.50');
    const unpriced = figures({ 'new-lug': { price: 24.5 } });
    expect(unpriced).toContain('at least remedies: EUR\u00a024.50');
    expect(unpriced).toContain('Remedy 1 has no price yet and is not counted.');
  });

  it('says of 3 for a label that may be sound that it is so if needed, and not “at least”, though remedy 2 has no price', () => {
    const { 'case-label': _, ...answers } = hutRecord().answers;
    const record = hutRecord({ answers, remedyNotes: { 'own-label': { price: 3 } } });
    const costs = JSON.stringify(blocks(hutSheet(record)).slice(4));
    expect(costs).toContain('"value":"remedies: EUR\u00a03.00","note":"if all of it is needed and can be done"');
    expect(costs).not.toContain('at least');
    expect(costs).toContain('Remedy 1 may turn out not to be needed, or not possible');
    expect(costs).toContain('Remedy 2 has no price yet and is not counted.');
  });

  it('still says “at least” 24.50 for the failed lug where only the label, unpriced, may turn out sound', () => {
    const { 'case-label': _, ...answers } = hutRecord().answers;
    const record = hutRecord({ answers, remedyNotes: { 'new-lug': { price: 24.5 } } });
    expect(JSON.stringify(blocks(hutSheet(record)))).toContain('at least remedies: EUR\u00a024.50');
  });

  it('says of the only price, 24.50 USD beside a pack in EUR, that it is not counted, not that there is none', () => {
    const costs = blocks(hutSheet(withNotes({ 'new-lug': { price: 24.5, currency: 'USD' } }))).slice(4);
    expect(costs).toEqual([
      { kind: 'subhead', text: 'What it costs' },
      { kind: 'paragraph', text: 'Remedy 1 has no price yet and is not counted.', tone: 'muted' },
      {
        kind: 'paragraph',
        text: 'Remedy 2 is priced in another currency than the nameplate’s and is not counted.',
        tone: 'muted',
      },
    ]);
  });

  it('stands in the PDF with cost and note', async () => {
    const sheet = hutSheet(withNotes({ 'new-lug': { price: 24.5, note: 'With heat-shrink.' } }), withParts);
    const { text } = await readPdf(await writePdf({ sheet, paper: 'a4', photos: noPhotos, fonts: FONTS }));
    for (const said of ['parts: One lug', 'work: 20 to 45 min', 'cost: EUR 24.50', 'With heat-shrink.']) {
      expect(text).toContain(said);
    }
  });
});

describe('sealed figures', () => {
  it('name 24.50 USD beside a pack in EUR among the unpriced, as sheets sealed before do', () => {
    const record = withNotes({ 'new-lug': { price: 24.5, currency: 'USD' } });
    expect(figuresOf({ definition: HUT_CHECKLIST, earlier: null, record })).toMatchObject({
      'afterRemedies/outside/unpricedIds': 'own-label',
      'afterRemedies/all/unpricedIds': 'own-label, new-lug',
    });
  });

  const linesOf = (record: ReturnType<typeof hutRecord>) =>
    Object.keys(figuresOf({ definition: HUT_CHECKLIST, earlier: null, record })).filter((path) =>
      path.startsWith('afterRemedies'),
    );

  it('have 0 lines on cost after remedies for a record without remedy notes, and 8 with one', () => {
    expect(linesOf(hutRecord())).toEqual([]);
    expect(linesOf(withNotes({ 'new-lug': { price: 24.5 } }))).toHaveLength(8);
  });
});

it.each([
  [20, 45, '20 to 45\u00a0min'],
  [15, 15, '15\u00a0min'],
  [90, 240, '1.5 to 4\u00a0h'],
  [120, 120, '2\u00a0h'],
  [20, 130, '20 to 130\u00a0min'],
])('work of %i to %i minutes is “%s”', (from, to, said) => {
  expect(workTime({ from, to })).toBe(said);
});
