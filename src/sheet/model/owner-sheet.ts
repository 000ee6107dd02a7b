import { ownerWords as say } from '../../text/owner.ts';
import { sheetWords } from '../../text/sheet.ts';
import { methodWords } from '../../text/sheet-record.ts';
import { stopWords } from '../../text/stop.ts';
import { verdictWords } from '../../text/verdict.ts';
import { words } from '../../text/words.ts';
import { clearingAdvice } from './clearing-words.ts';
import { disclosureOf } from './disclosure.ts';
import { type FitList, fitOnPage, type OwnerPaper, shortened } from './owner-fit.ts';
import { foundOf } from './owner-found.ts';
import { hurts } from './owner-hurts.ts';
import { untested } from './owner-untested.ts';
import { workOf } from './owner-work.ts';
import type { ParagraphBlock, Section, Sheet, VerdictBlock } from './sheet.ts';
import { type SheetContext, type SheetInput, sheetContext } from './sheet-context.ts';
import { packName, sheetHead } from './sheet-head.ts';

/** Longer names are cut on this page; the sheet has them whole. Our choice: two lines of the largest face. */
const NAME_LENGTH = 40;
const LINE_LENGTH = 110;
const FROM_LENGTH = 80;

/**
 * "Before you use this pack": one page for the owner, made of the blocks of the sheet. Whatever does not fit is counted
 * and left to the sheet.
 *
 * Shape   as makeSheet: record, grading and definition in; typed blocks out.
 * Error   where lines break is reckoned from the typeface's widths, with room to spare; one page of the paper asked for.
 * Throws  RangeError if grading and definition do not belong together.
 * Check   tests/sheet/owner-sheet.test.ts
 */
export function makeOwnerSheet(input: SheetInput, paper: OwnerPaper): Sheet {
  const context = sheetContext(input);
  const { record, definition, appVersion } = input;
  const { marks, line } = sheetHead(context);
  const name = shortened(packName(context), NAME_LENGTH);
  const title = `${name} · ${say.title}`;
  const head = {
    overline: say.overline(context.day),
    name,
    line: shortened(line, LINE_LENGTH),
    marks: marks.filter((mark) => mark === words.inventedDemo || mark === sheetWords.draftChecklist),
    standing: disclosure(context),
    caution: say.caution(context.day),
  };
  const verdict = verdictBlock(context);
  return {
    title,
    demoMark: record.demo ? words.inventedDemo : null,
    standingMark: say.standingMark,
    language: 'en-GB',
    newestMs: context.newestMs,
    utcOffsetMinutes: input.utcOffsetMinutes,
    head,
    sections: [
      { id: 'owner-verdict', title: say.title, headed: false, blocks: [verdict] },
      ...fitOnPage({ head, verdict, lists: listsOf(context), paper }).map(sectionOf),
    ],
    photos: [],
    madeBy: sheetWords.madeBy(
      appVersion,
      shortened(methodWords.version(definition.title, definition.id, definition.version), NAME_LENGTH),
    ),
  };
}

function verdictBlock(context: SheetContext): VerdictBlock {
  const { grading } = context;
  const { title, line, settled } = verdictWords(grading.verdict);
  const stop = grading.stop === 'failed';
  const advice = stop
    ? [...stopWords.steps]
    : grading.stop === 'possible'
      ? [sheetWords.stopPossible]
      : clearingAdvice(context);
  return { kind: 'verdict', stop, settled, title, line, advice };
}

function listsOf(context: SheetContext): FitList[] {
  const { sections } = say;
  const found = foundOf(context);
  const work = (reach: 'outside' | 'workshop', nothing: string) => orElse(workOf(context, reach, found), nothing);
  const isStopped = context.grading.stop === 'failed';
  const never = say.never.map((text) => ({ text }));
  return [
    { id: 'hurts', title: sections.hurts, ...orElse(hurts(context, found), say.noHazard) },
    ...(isStopped
      ? [{ id: 'yourself', title: sections.yourself, ...only(say.withheld) }]
      : [
          { id: 'yourself', title: sections.yourself, ...work('outside', say.nothingYourself) },
          { id: 'workshop', title: sections.workshop, ...work('workshop', say.nothingWorkshop) },
        ]),
    { id: 'never', title: sections.never, items: never, firstCount: never.length, isWhole: true },
    { id: 'untested', title: sections.untested, ...untested(context), isLater: true },
  ];
}

type Entries = Pick<FitList, 'items' | 'firstCount'>;

function orElse(entries: Entries, text: string): Entries {
  return entries.items.length === 0 ? only(text) : entries;
}

function only(text: string): Entries {
  return { items: [{ text }], firstCount: 1 };
}

/** Who it came from may be cut, whether links pay a commission never. */
function disclosure({ record }: SheetContext): ParagraphBlock {
  const { obtainedFrom } = record.nameplate;
  const nameplate = {
    ...record.nameplate,
    ...(obtainedFrom !== undefined && { obtainedFrom: shortened(obtainedFrom, FROM_LENGTH) }),
  };
  return { kind: 'paragraph', text: disclosureOf({ ...record, nameplate }).line, tone: 'muted' };
}

function sectionOf({ id, title, items }: FitList): Section {
  return {
    id: `owner-${id}`,
    title,
    // A small heading: six large ones would take a third of the page.
    headed: false,
    blocks: [
      { kind: 'subhead', text: title },
      { kind: 'list', items: [...items] },
    ],
  };
}
