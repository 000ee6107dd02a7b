import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import { foldRecord } from '../../src/record/fold-record.ts';
import type { PackRecord } from '../../src/record/pack-record.ts';
import type { Answer } from '../../src/schema/answer.ts';
import { checkDefinition } from '../../src/schema/check-definition.ts';
import type { Checklist } from '../../src/schema/checklist.ts';
import { fitOnPage, type OwnerPaper, shortened } from '../../src/sheet/model/owner-fit.ts';
import { makeOwnerSheet } from '../../src/sheet/model/owner-sheet.ts';
import type { Sheet } from '../../src/sheet/model/sheet.ts';
import { writePdf } from '../../src/sheet/pdf/write-pdf.ts';
import { ownerWords as say } from '../../src/text/owner.ts';
import { builtIn } from '../checklists/built-in.ts';
import { packOf, test } from '../grading/live-tests/tested-pack.ts';
import { HUT_CHECKLIST, hutRecord } from './hut-pack.ts';
import { FONTS, noPhotos } from './pdf-inputs.ts';
import { readPdf } from './read-pdf.ts';
import { DIPPER_SEAL, WREN_SEAL } from './sealed/demo-records.ts';

function ownerSheet(record: PackRecord, definition: Checklist, paper: OwnerPaper = 'letter'): Sheet {
  const input = {
    definition,
    definitionSha256: 'c'.repeat(64),
    record,
    grading: gradeRecord(definition, record),
    appVersion: '0.1.0',
    units: 'metric',
    locale: 'en',
    utcOffsetMinutes: 60,
  } as const;
  return makeOwnerSheet(input, paper);
}

/** The texts of one list, each with its detail. */
function listed(sheet: Sheet, id: string): string[] {
  const blocks = sheet.sections.find((section) => section.id === `owner-${id}`)?.blocks ?? [];
  return blocks.flatMap((block) =>
    block.kind === 'list'
      ? block.items.map(({ text, detail }) => (detail === undefined ? text : `${text} | ${detail}`))
      : [],
  );
}

const CODES = 'Local codes and licensed practice come before anything on this page.';

const pdfOf = async (sheet: Sheet, paper: 'a4' | 'letter') =>
  readPdf(await writePdf({ sheet, paper, photos: noPhotos, fonts: FONTS }));

/** As many signs as the schema lets through, of a repeated word. */
const filled = (word: string, length: number) =>
  word
    .repeat(Math.ceil(length / word.length))
    .slice(0, length)
    .trim();

/** The built-in checklist with every text of the page as long as may be. */
function longest(word: string): Checklist {
  const raw = {
    ...builtIn,
    hazards: builtIn.hazards.map((one) => ({ ...one, title: filled(word, 120), harm: filled(word, 400) })),
    items: builtIn.items.map((one) => ({ ...one, title: filled(word, 120) })),
    remedies: builtIn.remedies.map((one) => ({ ...one, text: filled(word, 400) })),
    title: filled(word, 120),
  };
  const verdict = checkDefinition(JSON.parse(JSON.stringify(raw)));
  if (!verdict.ok) throw new Error(JSON.stringify(verdict.problems));
  return verdict.definition;
}

/** Everything failed but, unless asked for, the stop items; every text of the nameplate as long as may be. */
function worstRecord(word: string, { stops }: { stops: boolean }): PackRecord {
  const text = filled(word, 120);
  return hutRecord({
    nameplate: {
      maker: text,
      model: text,
      sample: text,
      obtained: 'supplied',
      obtainedFrom: text,
      paysCommission: true,
    },
    facts: {},
    answers: Object.fromEntries(
      builtIn.items
        .filter(({ kind }) => kind === 'look')
        .map(({ id, stop, grades }): [string, Answer] => [
          id,
          { kind: 'grade', grade: stop && !stops ? 'sound' : grades.failed ? 'failed' : 'weak', evidence: 'seen' },
        ]),
    ),
  });
}

const WORDS = [
  ['words of everyday length', 'a lead that chafes on an edge may '],
  ['one word without a break', 'W'],
  ['long words with a sign to break at', 'WWWWWWWWWWWWWWWWWWWW-WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW '],
  ['characters the typeface lacks', '電池 '],
] as const;

describe('the owner’s page is 1 page', () => {
  describe.each(['a4', 'letter'] as const)('on %s', (paper) => {
    it.each([
      ['Wren', WREN_SEAL],
      ['Dipper', DIPPER_SEAL],
    ] as const)('for the demo pack %s', async (_, { packId, entries }) => {
      const pdf = await pdfOf(ownerSheet(foldRecord(packId, entries), builtIn, paper), paper);
      expect(pdf.pages).toHaveLength(1);
      expect(pdf.text).toContain(CODES);
    });

    it.each(
      WORDS.flatMap(([what, word]) => [
        [what, word, false] as const,
        [`${what}, and a stop sign`, word, true] as const,
      ]),
    )('with everything failed and the longest texts: %s', async (_, word, stops) => {
      const sheet = ownerSheet(worstRecord(word, { stops }), longest(word), paper);
      const pdf = await pdfOf(sheet, paper);
      expect(pdf.pages).toHaveLength(1);
      const { workshop, ...always } = say.sections;
      expect(pdf.text).toContain('pay a commission.');
      for (const said of [...Object.values(always), ...(stops ? [] : [workshop]), CODES, ...say.never]) {
        expect(pdf.text).toContain(said.replace(/\s+/g, ' '));
      }
      expect(JSON.stringify(sheet.sections[1]?.blocks)).toMatch(/\d+ (more )?on the sheet"/);
    });
  });
});

describe('what it says of the hut’s pack', () => {
  const sheet = ownerSheet(hutRecord(), HUT_CHECKLIST);

  it('names the hot joint first, as a high risk, and 1 remedy for each reach', () => {
    expect(listed(sheet, 'hurts')[0]).toBe('Hot joint (high risk): A joint glows and sets light to what is near it.');
    expect(listed(sheet, 'yourself')).toEqual(['1. Would also help: Put a true label on the case.']);
    expect(listed(sheet, 'workshop')).toEqual(['2. Clears a high risk: Crimp a new main lug.']);
  });

  it('says that no energy was measured, the 6 protections not tried, the 1 item open and the 1 not looked at singly', () => {
    expect(listed(sheet, 'untested')).toEqual([
      say.noRun,
      'Not tried far enough to tell: whether it protects itself against too much current, a short circuit, charging in the cold, heat, being run too low and being charged too high.',
      'Still open: 1 of 7 items (Enclosure 1).',
      say.unlooked(1),
      say.otherSamples,
    ]);
    expect(sheet.head.standing?.text).toContain('Sample bought from a shop.');
    expect(sheet.head.caution).toContain('25\u00a0November\u00a02026');
  });

  it('withholds every remedy of a pack with a stop sign and prints the 5 steps', () => {
    const answers = { ...hutRecord().answers, swollen: { kind: 'grade', grade: 'failed', evidence: 'seen' } } as const;
    const stopped = ownerSheet(hutRecord({ answers }), HUT_CHECKLIST);
    expect(listed(stopped, 'yourself')).toEqual([say.withheld]);
    expect(stopped.sections[0]?.blocks[0]).toMatchObject({ kind: 'verdict', stop: true });
    const [verdict] = stopped.sections[0]?.blocks ?? [];
    expect(verdict?.kind === 'verdict' ? verdict.advice : []).toHaveLength(5);
  });

  it('says of a pack with nothing found that this is no promise', () => {
    const answers = Object.fromEntries(
      HUT_CHECKLIST.items.map(({ id }): [string, Answer] => [id, { kind: 'grade', grade: 'sound', evidence: 'seen' }]),
    );
    const sound = ownerSheet(hutRecord({ answers }), HUT_CHECKLIST);
    expect(listed(sound, 'hurts')).toEqual([say.noHazard]);
    expect(listed(sound, 'yourself')).toEqual([say.nothingYourself]);
  });
});

describe('what nobody looked at', () => {
  const { 'main-lug': _, ...answers } = hutRecord().answers;
  const unseen = hutRecord({
    answers: { ...answers, 'cell-vents': { kind: 'grade', grade: 'weak', evidence: 'seen' } },
  });

  it('is no work order: the lug’s remedy is listed once it was found, not while it is open, nor for a passable label', () => {
    expect(listed(ownerSheet(unseen, HUT_CHECKLIST), 'workshop')).toEqual([say.nothingWorkshop]);
    const label = { kind: 'grade', grade: 'passable', evidence: 'seen' } as const;
    const leavesSound = {
      ...HUT_CHECKLIST,
      remedies: HUT_CHECKLIST.remedies.map((one) => ({
        ...one,
        settles: [{ item: 'case-label', leaves: 'sound' as const }],
      })),
    };
    const passable = ownerSheet(hutRecord({ answers: { ...answers, 'case-label': label } }), leavesSound);
    expect(listed(passable, 'yourself')).toEqual([say.nothingYourself]);
  });

  it('is told from what was found but may still not apply: 1 remedy of 2 is listed with that said', () => {
    const floor = {
      id: 'new-sheet',
      text: 'Lay a sheet.',
      reach: 'workshop',
      settles: [{ item: 'metal-floor', leaves: 'sound' }],
    } as const;
    const checklist = {
      ...HUT_CHECKLIST,
      remedies: [...HUT_CHECKLIST.remedies, { ...floor, settles: [...floor.settles] }],
    };
    const failed = { ...answers, 'metal-floor': { kind: 'grade', grade: 'failed', evidence: 'seen' } } as const;
    const [only, ...more] = listed(ownerSheet(hutRecord({ answers: failed, facts: {} }), checklist), 'workshop');
    expect(only).toMatch(/: Lay a sheet\. \| may still not apply: a fact about the pack is open$/);
    expect(more).toEqual([]);
  });

  it('stands after what was found, whatever its risk: the serious vents before the lug of up to high risk', () => {
    expect(listed(ownerSheet(unseen, HUT_CHECKLIST), 'hurts')).toEqual([
      'Relief blocked (serious risk): A cell cannot vent and bursts.',
      'Hot joint (up to high risk, not settled): A joint glows and sets light to what is near it.',
    ]);
  });

  it('is counted by zone, 2 of 7, 1 for safety, which is named last', () => {
    const said = listed(ownerSheet(unseen, HUT_CHECKLIST), 'untested');
    expect(said).toContain('Still open: 2 of 7 items, 1 of them for safety (Enclosure 1, Wiring 1).');
    expect(said.at(-1)).toBe('Safety, still open: Main lug.');
  });

  it('is said of a short route: only 5 of 7 items were asked', () => {
    expect(listed(ownerSheet(hutRecord({ route: 'short' }), HUT_CHECKLIST), 'untested')).toContain(
      'A short route was taken: only 5 of the checklist’s 7 items were asked.',
    );
  });

  it('leaves no protection of Wren’s untried but the short circuit', () => {
    const wren = ownerSheet(foldRecord(WREN_SEAL.packId, WREN_SEAL.entries), builtIn);
    expect(listed(wren, 'untested')).toContain(
      'Not tried far enough to tell: whether it protects itself against a short circuit.',
    );
  });
});

describe('heat tried on one side only', () => {
  // By tests/grading/side-by-side/protections.test.ts a cut at 60 °C tells of its own side alone.
  it.each([
    ['hotCharge', 'heat under load'],
    ['hotDischarge', 'heat while charging'],
  ])('%s leaves %s untried, 1 of 6 protections', (kind, words) => {
    const { tests } = packOf({}, test('cutOff', 1, { kind, acted: true, sensorDegC: 60 }));
    const [, untried] = listed(ownerSheet(hutRecord({ tests }), HUT_CHECKLIST, 'a4'), 'untested');
    expect(untried).toContain(` charging in the cold, ${words}, being run too low `);
  });
});

describe('the room of the page', () => {
  const wren = ownerSheet(foldRecord(WREN_SEAL.packId, WREN_SEAL.entries), builtIn);

  it('has all 5 hazards found in Wren before the unseen one, and its 1 + 3 remedies that are enough for what was found', () => {
    const hurts = listed(wren, 'hurts');
    expect(hurts.slice(0, 6).map((text) => text.replace(/:.*/, ''))).toEqual([
      'Over-current not cut off (high risk)',
      'Relief blocked (serious risk)',
      'Chafe short (serious risk)',
      'Heat unseen (medium risk)',
      'Water in (medium risk)',
      'Can or case short (up to high risk, not settled)',
    ]);
    expect(listed(wren, 'yourself')[0]).toMatch(/^1\. Clears a high risk: Fit a DC fuse/);
    expect(
      listed(wren, 'workshop')
        .slice(0, 3)
        .map((text) => text.replace(/:.*/, '')),
    ).toEqual(['4. Clears a serious risk', '6. Clears a serious risk', '7. Clears a serious risk']);
  });

  const rows = (count: number) => Array.from({ length: count }, (_, place) => ({ text: `row ${place}` }));
  const fitted = (paper: OwnerPaper, firstCount: number) =>
    fitOnPage({
      head: { overline: '', name: 'W', line: '', marks: [], standing: null, caution: '' },
      verdict: { kind: 'verdict', stop: false, settled: true, title: 'W', line: '', advice: [] },
      lists: [
        { id: 'low', title: 'Low', items: rows(40), firstCount: 0 },
        { id: 'first', title: 'First', items: rows(40), firstCount },
      ],
      paper,
    });

  /**
   * By the sizes of sheet/pdf: head 42 + 29 + 2 × 13.2 + 2 × 11.2, verdict 14 + 23 + 13.2, 6 clear of the ground and two
   * headings of 24 are 224 pt; of 668 on Letter 444 are left, of 718 on A4 494, for rows of 13.2 + 2.
   */
  it.each([
    ['letter', 29],
    ['a4', 32],
  ] as const)('is used up: on %s it has %i rows of 80, and each heading says how many are left', (paper, count) => {
    const lists = fitted(paper, 0);
    expect(lists.reduce((sum, { items }) => sum + items.length, 0)).toBe(count);
    for (const { items, title } of lists) expect(title).toContain(` · and ${40 - items.length} more on the sheet`);
  });

  it('is given to what matters before any list gets more: 20 first rows, then 4 and 5 in turn; all but the 1 row that a count would take', () => {
    expect(fitted('letter', 20).map(({ items }) => items.length)).toEqual([5, 24]);
    expect(fitted('letter', 40).map(({ items }) => items)).toEqual([rows(1), rows(28)]);
  });
});

describe('shortened', () => {
  it('cuts 6 signs to 5 with an ellipsis, counts by code point, and leaves 5 alone', () => {
    expect(shortened('abcdef', 5)).toBe('abcd…');
    expect(shortened('abcde', 5)).toBe('abcde');
    expect(shortened('🔋🔋🔋', 2)).toBe('🔋…');
  });
});
