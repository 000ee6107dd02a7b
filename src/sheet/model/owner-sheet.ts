import { capacityResult } from '../../grading/live-tests/capacity-result.ts';
import { ownerWords as say } from '../../text/owner.ts';
import { sheetWords } from '../../text/sheet.ts';
import { methodWords } from '../../text/sheet-record.ts';
import { stopWords } from '../../text/stop.ts';
import { verdictWords } from '../../text/verdict.ts';
import { words } from '../../text/words.ts';
import { clearingWords } from './clearing-words.ts';
import { disclosureOf } from './disclosure.ts';
import { type FitList, fitOnPage, shortened } from './owner-fit.ts';
import { remedyText } from './remedy-blocks.ts';
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
 * Error   where lines break is reckoned from the typeface's widths, with room to spare; one page on A4 and on Letter.
 * Throws  RangeError if grading and definition do not belong together.
 * Check   tests/sheet/owner-sheet.test.ts
 */
export function makeOwnerSheet(input: SheetInput): Sheet {
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
      ...fitOnPage({ head, verdict, lists: listsOf(context) }).map(sectionOf),
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
      : clearingWords(context).sentences;
  return { kind: 'verdict', stop, settled, title, line, advice };
}

function listsOf(context: SheetContext): FitList[] {
  const { sections } = say;
  const stop = context.grading.stop === 'failed';
  return [
    list('hurts', sections.hurts, orElse(hurts(context), say.noHazard)),
    ...(stop
      ? [list('yourself', sections.yourself, [{ text: say.withheld }])]
      : [
          list('yourself', sections.yourself, orElse(doable(context, 'outside'), say.nothingYourself)),
          list('workshop', sections.workshop, orElse(doable(context, 'workshop'), say.nothingWorkshop)),
        ]),
    {
      ...list(
        'never',
        sections.never,
        say.never.map((text) => ({ text })),
      ),
      isWhole: true,
    },
    list('untested', sections.untested, untested(context)),
  ];
}

type Entry = FitList['items'][number];

function list(id: string, title: string, items: Entry[]): FitList {
  return { id, title, items, isWhole: false };
}

function orElse(items: Entry[], text: string): Entry[] {
  return items.length === 0 ? [{ text }] : items;
}

const RISK_ORDER = ['high', 'serious', 'medium', 'low'] as const;

/** Worst first, then as the checklist has them; what may still turn out is told as such. */
function hurts({ grading, hazardOf }: SheetContext): Entry[] {
  return RISK_ORDER.flatMap((level) =>
    grading.hazards
      .filter(({ risk }) => risk.low === level)
      .map(({ hazardId, risk }) => {
        const { title, harm } = hazardOf(hazardId);
        const howSure = risk.high === level ? say.risk(level) : say.riskUpTo(level);
        return { text: say.hazard({ title, harm, risk: howSure }) };
      }),
  );
}

function doable(context: SheetContext, reach: 'outside' | 'workshop'): Entry[] {
  return context.grading.remedies
    .filter((remedy) => remedy.reach === reach && remedy.ruledOut === undefined)
    .map(({ remedyId, open }) => ({
      text: remedyText(context, remedyId),
      ...(open !== undefined && { detail: sheetWords.remedies.fuseOpen }),
    }));
}

function untested(context: SheetContext): Entry[] {
  const { grading, itemOf, record } = context;
  const openCount = grading.askedCount - grading.settledCount;
  const notAskedCount = grading.itemCount - grading.askedCount;
  return [
    ...grading.openSafetyItemIds.map((id) => ({ text: say.openSafety(itemOf(id).title) })),
    ...(openCount === 0 ? [] : [{ text: say.open(openCount, grading.askedCount) }]),
    ...(notAskedCount === 0 ? [] : [{ text: say.notAsked(notAskedCount) }]),
    ...(grading.unlookedCount === 0 ? [] : [{ text: say.unlooked(grading.unlookedCount) }]),
    ...(hasDelivered(record) ? [] : [{ text: say.noRun }]),
    { text: say.otherSamples },
  ];
}

function hasDelivered(record: SheetContext['record']): boolean {
  try {
    return capacityResult(record).delivered !== null;
  } catch (error) {
    // A figure so far out that a calculation refuses it tells nothing of the energy.
    if (error instanceof RangeError) return false;
    throw error;
  }
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
