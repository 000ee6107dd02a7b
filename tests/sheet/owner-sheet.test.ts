import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import { foldRecord } from '../../src/record/fold-record.ts';
import type { PackRecord } from '../../src/record/pack-record.ts';
import type { Answer } from '../../src/schema/answer.ts';
import { checkDefinition } from '../../src/schema/check-definition.ts';
import type { Checklist } from '../../src/schema/checklist.ts';
import { shortened } from '../../src/sheet/model/owner-fit.ts';
import { makeOwnerSheet } from '../../src/sheet/model/owner-sheet.ts';
import type { Sheet } from '../../src/sheet/model/sheet.ts';
import { writePdf } from '../../src/sheet/pdf/write-pdf.ts';
import { ownerWords as say } from '../../src/text/owner.ts';
import { builtIn } from '../checklists/built-in.ts';
import { HUT_CHECKLIST, hutRecord } from './hut-pack.ts';
import { FONTS, noPhotos } from './pdf-inputs.ts';
import { readPdf } from './read-pdf.ts';
import { DIPPER_SEAL, WREN_SEAL } from './sealed/demo-records.ts';

function ownerSheet(record: PackRecord, definition: Checklist): Sheet {
  return makeOwnerSheet({
    definition,
    definitionSha256: 'c'.repeat(64),
    record,
    grading: gradeRecord(definition, record),
    appVersion: '0.1.0',
    units: 'metric',
    locale: 'en',
    utcOffsetMinutes: 60,
  });
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
      const pdf = await pdfOf(ownerSheet(foldRecord(packId, entries), builtIn), paper);
      expect(pdf.pages).toHaveLength(1);
      expect(pdf.text).toContain(CODES);
    });

    it.each(
      WORDS.flatMap(([what, word]) => [
        [what, word, false] as const,
        [`${what}, and a stop sign`, word, true] as const,
      ]),
    )('with everything failed and the longest texts: %s', async (_, word, stops) => {
      const sheet = ownerSheet(worstRecord(word, { stops }), longest(word));
      const pdf = await pdfOf(sheet, paper);
      expect(pdf.pages).toHaveLength(1);
      const { workshop, ...always } = say.sections;
      expect(pdf.text).toContain('pay a commission.');
      for (const said of [...Object.values(always), ...(stops ? [] : [workshop]), CODES, ...say.never]) {
        expect(pdf.text).toContain(said.replace(/\s+/g, ' '));
      }
      expect(listed(sheet, 'hurts').at(-1)).toMatch(/^and \d+ more on the sheet$/);
    });
  });
});

describe('what it says of the hut’s pack', () => {
  const sheet = ownerSheet(hutRecord(), HUT_CHECKLIST);

  it('names the hot joint first, as a high risk, and 1 remedy for each reach', () => {
    expect(listed(sheet, 'hurts')[0]).toBe('Hot joint (high risk): A joint glows and sets light to what is near it.');
    expect(listed(sheet, 'yourself')).toEqual(['Put a true label on the case.']);
    expect(listed(sheet, 'workshop')).toEqual(['Crimp a new main lug.']);
  });

  it('says the 1 item of 6 still open, the 1 not looked at singly, that no energy was measured, and how it was obtained', () => {
    expect(listed(sheet, 'untested')).toEqual([say.open(1, 7), say.unlooked(1), say.noRun, say.otherSamples]);
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

describe('shortened', () => {
  it('cuts 6 signs to 5 with an ellipsis, counts by code point, and leaves 5 alone', () => {
    expect(shortened('abcdef', 5)).toBe('abcd…');
    expect(shortened('abcde', 5)).toBe('abcde');
    expect(shortened('🔋🔋🔋', 2)).toBe('🔋…');
  });
});
