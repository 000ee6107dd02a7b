import { formatScore } from '../../text/format-number.ts';
import { letterWords as say } from '../../text/letter.ts';
import { ROUTE_WORDS, sheetWords } from '../../text/sheet.ts';
import { methodWords } from '../../text/sheet-record.ts';
import { verdictWords } from '../../text/verdict.ts';
import { words } from '../../text/words.ts';
import { disclosureOf } from './disclosure.ts';
import { letterFacts } from './letter-facts.ts';
import { letterReadings } from './letter-readings.ts';
import type { Block, Sheet } from './sheet.ts';
import { type SheetContext, type SheetInput, sheetContext } from './sheet-context.ts';
import { packName } from './sheet-head.ts';
import { markOf, standingOf } from './sheet-standing.ts';
import { cutTo, linesOf, type TextRoom } from './text-room.ts';

/**
 * Widths in em of the letters that stand there, on A4, the narrower paper: 482 pt between the margins
 * (sheet/pdf/paper.ts), letters as in sheet/pdf/text-style.ts. Beside the foot there is room for the page number.
 */
const WIDTH_EM = { name: 18.5, body: 50.5, list: 49.5, quote: 49.5, small: 57.5, foot: 55 } as const;
/**
 * The lower paper, US Letter, has 670 pt for text: 50 lines of 13.2 pt. Head, four subheads and the spaces between
 * paragraphs take 17 of them, a remark on letters that the typeface lacks 2. Check: tests/sheet/letter-sheet.test.ts.
 */
const FREE_LINES = 31;
const GAP_LINES = 0.31;
const MOST_LINES = { line: 2, intro: 5, reading: 3, opinion: 4, small: 3, signed: 1 } as const;
/** A checklist's title within a sentence: half a line. Of whom the sample came from as much, so that who pays stays. */
const WITHIN_EM = 25;

/**
 * A letter to the maker on one page, whatever the record holds: facts, readings, opinion apart, what is asked, the right
 * of reply, disclosure and signature. What is too long for the page is cut at a word and stands whole on the sheet.
 *
 * Check   tests/sheet/letter-sheet.test.ts
 */
export function makeLetterSheet(input: SheetInput): Sheet {
  const context = sheetContext(input);
  const { record, definition, appVersion, day } = context;
  const { sample } = record.nameplate;
  const standing = markOf(standingOf(context));
  const name = packName(context);
  return {
    title: [say.title, name, ...(sample === undefined ? [] : [words.sample(sample)])].join(' · '),
    demoMark: record.demo ? words.inventedDemo : null,
    standingMark: standing,
    language: 'en-GB',
    newestMs: context.newestMs,
    utcOffsetMinutes: context.utcOffsetMinutes,
    head: {
      overline: say.overline(day),
      name: cutTo(name, { lines: 1, widthEm: WIDTH_EM.name }),
      line: cutTo(addressLine(context), { lines: MOST_LINES.line, widthEm: WIDTH_EM.body }),
      marks: [standing, ...(record.demo ? [words.inventedDemo] : [])],
      standing: null,
      caution: sheetWords.oneSample(day),
    },
    sections: [{ id: 'letter', title: say.title, headed: false, wide: true, blocks: letterBlocks(context) }],
    photos: [],
    madeBy: cutTo(sheetWords.madeBy(appVersion, checklistWords(definition)), { lines: 1, widthEm: WIDTH_EM.foot }),
  };
}

function letterBlocks(context: SheetContext): Block[] {
  const { record } = context;
  const { opinion, signedAs } = record.words;
  const label = fitted(say.opinionOf(signedAs), 'signed', WIDTH_EM.small);
  const signed = fitted(signedAs === undefined ? say.signedNobody : say.signed(signedAs), 'signed', WIDTH_EM.body);
  const intro = fitted(introWords(context), 'intro', WIDTH_EM.body);
  const readings = letterReadings(record).map((text) => fitted(text, 'reading', WIDTH_EM.list));
  const opinionWords = opinion?.trim() ? fitted(opinion, 'opinion', WIDTH_EM.quote) : null;
  const small = fitted(smallPrint(context), 'small', WIDTH_EM.small);
  const spent = [
    linesOf(intro, WIDTH_EM.body),
    ...readings.map((text) => linesOf(text, WIDTH_EM.list) + GAP_LINES),
    opinionWords === null ? 1 : linesOf(opinionWords, WIDTH_EM.quote) + 1,
    linesOf(say.asks, WIDTH_EM.body),
    linesOf(say.reply, WIDTH_EM.body),
    linesOf(small, WIDTH_EM.small),
  ].reduce((sum, lines) => sum + lines, 0);
  const facts = letterFacts(context, { lines: FREE_LINES - spent, gapLines: GAP_LINES, widthEm: WIDTH_EM.list });
  return [
    paragraph(intro),
    { kind: 'subhead', text: say.facts },
    list(facts),
    { kind: 'subhead', text: say.readings },
    list(readings),
    { kind: 'subhead', text: say.opinion },
    opinionWords === null ? paragraph(say.noOpinion) : { kind: 'quote', label, text: opinionWords },
    { kind: 'subhead', text: say.ask },
    paragraph(say.asks),
    paragraph(say.reply),
    paragraph(small, 'muted'),
    paragraph(signed),
  ];
}

function addressLine({ record }: SheetContext): string {
  const { maker, model, serial, revision, madeOn, sample } = record.nameplate;
  return [
    maker === undefined ? say.toNobody : say.to(maker),
    ...(model === undefined ? [] : [say.model(model)]),
    ...(serial === undefined ? [] : [say.serial(serial)]),
    ...(revision === undefined ? [] : [say.revision(revision)]),
    ...(madeOn === undefined ? [] : [say.madeOn(madeOn)]),
    ...(sample === undefined ? [] : [words.sample(sample)]),
  ].join(' · ');
}

function introWords({ record, definition, grading, day }: SheetContext): string {
  const { runs, trips, cutOffs } = record.tests;
  const tests = [
    ...(runs.length === 0 ? [] : [say.runs(runs.length)]),
    ...(trips.length === 0 ? [] : [say.trips(trips.length)]),
    ...(cutOffs.length === 0 ? [] : [say.cutOffs(cutOffs.length)]),
  ];
  const isWithheld = grading.stop === 'failed';
  const score = grading.score === null || isWithheld ? null : formatScore(grading.score, grading.settled);
  return [
    say.judged({
      day,
      checklist: checklistWords(definition),
      route: ROUTE_WORDS[grading.route],
      asked: grading.askedCount,
      all: grading.itemCount,
      settled: grading.settledCount,
    }),
    say.verdict(verdictWords(grading.verdict).title, score),
    ...(isWithheld ? [say.withheld] : []),
    say.ranTests(tests),
  ].join(' ');
}

function checklistWords({ title, id, version }: SheetContext['definition']): string {
  return methodWords.version(cutTo(title, { lines: 1, widthEm: WITHIN_EM }), id, version);
}

function smallPrint(context: SheetContext): string {
  const standing = standingOf(context);
  const closing = standing.is === 'open' || standing.is === 'revising' ? null : standing.closing;
  const sheet = closing === null ? say.sheetOpen : say.sheetClosed(closing.revision, closing.sha256);
  const { nameplate, demo } = context.record;
  const { obtainedFrom } = nameplate;
  const from =
    obtainedFrom === undefined ? {} : { obtainedFrom: cutTo(obtainedFrom, { lines: 1, widthEm: WITHIN_EM }) };
  return `${disclosureOf({ nameplate: { ...nameplate, ...from }, demo }).line} ${sheet}`;
}

function fitted(text: string, what: keyof typeof MOST_LINES, widthEm: TextRoom['widthEm']): string {
  return cutTo(text, { lines: MOST_LINES[what], widthEm });
}

function paragraph(text: string, tone: 'plain' | 'muted' = 'plain'): Block {
  return { kind: 'paragraph', text, tone };
}

function list(texts: readonly string[]): Block {
  return { kind: 'list', items: texts.map((text) => ({ text })) };
}
