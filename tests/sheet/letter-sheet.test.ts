import { describe, expect, it } from 'vitest';
import type { PackRecord } from '../../src/record/pack-record.ts';
import type { Checklist } from '../../src/schema/checklist.ts';
import { makeLetterSheet } from '../../src/sheet/model/letter-sheet.ts';
import { letterText } from '../../src/sheet/model/letter-text.ts';
import type { Sheet } from '../../src/sheet/model/sheet.ts';
import type { SheetInput } from '../../src/sheet/model/sheet-context.ts';
import { linesOf } from '../../src/sheet/model/text-room.ts';
import type { Paper } from '../../src/sheet/pdf/paper.ts';
import { writePdf } from '../../src/sheet/pdf/write-pdf.ts';
import { CLOSED_ONCE, HASH_1 } from './closed-pack.ts';
import { DIPPER_INPUT, inputOf, ODD, WREN_INPUT } from './exports/inputs.ts';
import { HUT_CHECKLIST, hutRecord, LUG_NOTE } from './hut-pack.ts';
import { MANY_TESTS } from './live-tests/many-tests.ts';
import { FONTS, noPhotos } from './pdf-inputs.ts';
import { readPdf } from './read-pdf.ts';

const read = async (sheet: Sheet, paper: Paper) =>
  readPdf(await writePdf({ sheet, paper, photos: noPhotos, fonts: FONTS }));

/** Every text as long as the schema lets it be, many findings, every test, letters that the typeface lacks. */
function fullest(letters: string, { withheld = false } = {}): SheetInput {
  const long = (length: number) => letters.repeat(Math.ceil(length / letters.length)).slice(0, length);
  const definition: Checklist = {
    ...HUT_CHECKLIST,
    title: long(120),
    remedies: [],
    items: Array.from({ length: 6 }, (_, copy) =>
      HUT_CHECKLIST.items.map((item) => ({
        ...item,
        id: `${item.id}-${copy}`,
        title: long(120),
        grades: { ...item.grades, failed: long(400) },
      })),
    ).flat(),
  };
  const record: PackRecord = hutRecord({
    ...CLOSED_ONCE,
    tests: MANY_TESTS,
    answers: Object.fromEntries(
      definition.items
        .filter(({ stop }) => withheld || !stop)
        .map(({ id }) => [id, { kind: 'grade', grade: 'failed', evidence: 'seen' } as const]),
    ),
    facts: { 'metal-case': 'yes' },
    nameplate: {
      ...hutRecord().nameplate,
      name: long(120),
      maker: long(120),
      model: long(120),
      serial: long(120),
      revision: long(120),
      madeOn: long(120),
      sample: long(120),
      obtainedFrom: long(120),
      paysCommission: true,
    },
    words: { opinion: long(2000), signedAs: long(120) },
  });
  return inputOf(record, definition);
}

/** The hut's pack with the same note on every answer. */
function noted(note: string): PackRecord {
  const { answers } = hutRecord();
  return hutRecord({
    answers: Object.fromEntries(Object.entries(answers).map(([id, answer]) => [id, { ...answer, note }])),
  });
}

const PROSE = fullest('The lug was pressed with a wrong tool and its strands end short of the barrel. ');
/** The same with a note on every finding. */
const FULLEST_NOTED = inputOf(
  {
    ...PROSE.record,
    answers: Object.fromEntries(
      Object.entries(PROSE.record.answers).map(([id, answer]) => [id, { ...answer, note: 'W@M% '.repeat(400).trim() }]),
    ),
  },
  PROSE.definition,
);

const FULLEST: [string, SheetInput][] = [
  ['prose', PROSE],
  ['prose, every finding with a note of 2000 signs', FULLEST_NOTED],
  ['capitals', fullest('WARM MAIN LUG ')],
  ['one long word', fullest('Schweissverbindungsstelle')],
  ['wide letters without a space', fullest('W@M%')],
  ['narrow letters', fullest('ill it, ')],
  ['the score withheld', fullest('W@M%', { withheld: true })],
  ['lines', fullest('a line\nand another\n')],
  ['letters the typeface lacks', fullest('電池 パック ')],
];

function factsOf(input: SheetInput): string[] {
  const list = makeLetterSheet(input).sections[0]?.blocks[2];
  return list?.kind === 'list' ? list.items.map(({ text }) => text) : [];
}

describe.each(['a4', 'letter'] as const)('the letter on %s', (paper) => {
  it.each([...FULLEST, ...Object.entries(ODD)])('is 1 page: %s', async (_, input) => {
    const { pages } = await read(makeLetterSheet(input), paper);
    expect(pages).toHaveLength(1);
  });
});

describe('what the letter says', () => {
  const letter = makeLetterSheet(inputOf(hutRecord(CLOSED_ONCE)));
  const text = letterText(letter);

  it('says whole route, 7 of 7 items asked and 6 settled, and never that all was looked at', () => {
    // Of the hut pack only the lid is open: it was not seen.
    expect(text).toContain('on the whole route: all 7 items were asked, 6 are settled.');
    expect(text).not.toContain('item by item');
    expect(text).not.toContain('was tested');
  });

  it('says that a short route asks 5 of 7 items, and that none is settled where nothing was answered', () => {
    // By the table of tests/sheet/hut-pack.ts: label and tidy are asked on the whole route only.
    const short = letterText(makeLetterSheet(inputOf(hutRecord({ route: 'short' }))));
    expect(short).toContain('on the short route: 5 of its 7 items were asked, 4 are settled.');
    expect(letterText(makeLetterSheet(ODD['nothing answered'] as SheetInput))).toContain('none is settled.');
  });

  it.each(FULLEST)('has its first paragraph uncut at its longest: %s', (_, input) => {
    const [intro] = makeLetterSheet(input).sections[0]?.blocks ?? [];
    expect(intro).toMatchObject({ text: expect.stringMatching(/trials of cut-offs\.$/u) });
  });

  it.each(FULLEST)('has who pays and the SHA-256 of the sheet uncut at its longest: %s', (_, input) => {
    const said = letterText(makeLetterSheet(input));
    expect(said).toContain('The tester’s links to the seller pay a commission.');
    expect(said).toContain(`SHA-256 ${HASH_1}.`);
  });

  it.each(FULLEST)('has a foot of one line, clear of the page number: %s', (_, input) => {
    // 482 pt between the margins of A4, letters of 7.6 pt (sheet/pdf/text-style.ts), 64 pt for "1 of 1": 55 em.
    expect(linesOf(makeLetterSheet(input).madeBy, 55)).toBe(1);
  });

  it('is addressed to the maker with model and serial number, where the nameplate has them', () => {
    expect(letter.head.line).toBe('To: Wren Works · sample 1');
    const { nameplate } = hutRecord();
    const whole = inputOf(hutRecord({ nameplate: { ...nameplate, model: 'W24', serial: 'W-7', revision: 'B' } }));
    expect(makeLetterSheet(whole).head.line).toBe(
      'To: Wren Works · model W24 · serial number W-7 · revision B · sample 1',
    );
    expect(makeLetterSheet(ODD['nothing answered'] as SheetInput).head.line).toBe(
      'To: the maker, not named on the nameplate',
    );
  });

  it('gives 2 facts, worst first, with grade and risk', () => {
    const [, , facts] = letter.sections[0]?.blocks ?? [];
    expect(facts).toEqual({
      kind: 'list',
      items: [
        { text: `Main lug (failed, high risk): Strands end short of the barrel. Noted: ${LUG_NOTE}` },
        { text: 'Label (weak): Capacity above what the cells can give.' },
      ],
    });
  });

  /** Read by hand off the demo pack: its sentences name two or three faults each, its notes say which was seen. */
  it('says beside the sentences of Wren’s 3 worst findings, each with “or” in it, what its tester noted', () => {
    const said = letterText(makeLetterSheet(WREN_INPUT));
    expect(said).toContain('Noted: 180 A on the load bank');
    expect(said).toContain('Noted: The bead covers about a third of the vent. The same tape holds it down.');
    expect(said).toContain('Noted: Nine thin wires over a bare steel edge, pulled tight.');
  });

  it('has as many findings at length with notes as without: 3 of Wren’s 9, the other 6 by title', () => {
    const { record, definition } = WREN_INPUT;
    const silent = Object.fromEntries(
      Object.entries(record.answers).map(([id, answer]) => [id, { ...answer, note: '' }]),
    );
    const bare = factsOf(inputOf({ ...record, answers: silent }, definition));
    const said = factsOf(WREN_INPUT);
    expect(said).toHaveLength(4);
    expect(said.at(-1)).toBe(bare.at(-1));
    expect(said.map((text, place) => text.startsWith(bare[place] ?? '?'))).toEqual([true, true, true, true]);
  });

  it('cuts a note of 2000 signs to a third line, ended with “…”', () => {
    const [lug = ''] = factsOf(
      inputOf(noted('The crimp was cut open and its strands counted. '.repeat(42).slice(0, 2000))),
    );
    expect(lug).toMatch(/^Main lug \(failed, high risk\): Strands end short of the barrel\. Noted: The crimp .* …$/u);
    expect(linesOf(lug, 49.5)).toBeLessThanOrEqual(3);
  });

  it('has the title “Rating label” beside the sentence on three or more of the seven', () => {
    expect(factsOf(DIPPER_INPUT).join('\n')).toContain('Rating label (weak): Three or more of the seven are missing');
  });

  it('sets the opinion apart as the tester’s, and has none of it among the facts', () => {
    const blocks = letter.sections[0]?.blocks ?? [];
    const quotes = blocks.filter(({ kind }) => kind === 'quote');
    expect(quotes).toEqual([{ kind: 'quote', label: 'M. Bench writes', text: 'I would not sleep beside it.' }]);
    const [facts = '', opinion = ''] = text.split('OPINION OF THE TESTER, APART FROM THE FACTS');
    expect(facts).not.toContain('sleep');
    expect(opinion).toContain('I would not sleep beside it.');
  });

  it('says what was not tried: no capacity, no over-current, no cut-off', () => {
    expect(text).toContain('- Delivered capacity: not tested.');
    expect(text).toContain('- Too much current: not tried.');
    expect(text).toContain('- Cut-offs: none tried.');
  });

  it('gives delivered against promised of an invented pack that was run', () => {
    expect(letterText(makeLetterSheet(WREN_INPUT))).toMatch(/- Delivered: .*Ah.*; promised: 100 Ah/u);
    expect(letterText(makeLetterSheet(DIPPER_INPUT))).not.toContain('Too much current: not tried.');
  });

  it('names the right of reply, the disclosure, the sheet by its SHA-256 and who signs', () => {
    expect(text).toContain('You have the right of reply.');
    expect(text).toContain('Invented demo: no such pack exists. Sample bought from a shop.');
    expect(text).toContain(HASH_1);
    expect(text).toContain('Signed: M. Bench');
  });

  it('gives no score where a stop sign withholds it', () => {
    const said = letterText(makeLetterSheet(ODD['a stop sign found'] as SheetInput));
    expect(said).toContain('the score is withheld');
    expect(said).not.toMatch(/the score \d/);
  });

  it('cut, still names every kind of what follows: facts by title, an ellipsis where words are missing', () => {
    const said = letterText(makeLetterSheet(FULLEST[0]?.[1] ?? WREN_INPUT));
    expect(said).toContain('Also on the sheet:');
    expect(said).toContain('…');
    expect(said).toContain('You have the right of reply.');
  });

  it('has the same words on paper, read back by another program', async () => {
    const { text: paper } = await read(letter, 'a4');
    for (const line of text.split(/\n| · (?=invented demo)/).filter((one) => one !== '')) {
      const plain = line
        .replace(/^- |:$/g, '')
        .normalize('NFKC')
        .replace(/\s+/g, ' ');
      expect(paper.toLowerCase()).toContain(plain.toLowerCase());
    }
  });
});
