import { RISK_SCALE_LINES } from '../../text/risk.ts';
import { sheetWords } from '../../text/sheet.ts';
import { methodWords } from '../../text/sheet-record.ts';
import { words } from '../../text/words.ts';
import { afterwardsBlocks } from './afterwards-blocks.ts';
import { answersBlocks } from './answers-blocks.ts';
import { attachedBlocks } from './attached-blocks.ts';
import { closingBlocks } from './closing-blocks.ts';
import { findingBlocks } from './finding-blocks.ts';
import { ledgerBlocks } from './ledger-block.ts';
import { liveTestsBlocks } from './live-tests/live-tests-blocks.ts';
import { methodBlocks } from './method-blocks.ts';
import { openBlocks } from './open-blocks.ts';
import { promisedBlocks } from './promised-blocks.ts';
import { remedyBlocks } from './remedy-blocks.ts';
import { resultBlocks } from './result-blocks.ts';
import { secondReadingBlocks } from './second-reading-blocks.ts';
import type { Block, Section, SectionId, Sheet } from './sheet.ts';
import { type SheetContext, type SheetInput, sheetContext } from './sheet-context.ts';
import { packName, sheetHead } from './sheet-head.ts';
import { markOf, standingOf } from './sheet-standing.ts';
import { sinceBlocks } from './since-blocks.ts';
import { sourcesBlocks } from './sources-blocks.ts';
import { wordsBlocks } from './words-blocks.ts';

/**
 * The Sheet of one pack: everything that is said of it, in reading order, ready to be drawn on screen or paper.
 *
 * Shape   record, its grading and the definition it was graded by in; typed blocks out. Same input, same sheet.
 * Throws  RangeError if grading and definition do not belong together.
 * Check   tests/sheet/make-sheet.test.ts
 */
export function makeSheet(input: SheetInput): Sheet {
  const context = sheetContext(input);
  const { record, definition, appVersion } = input;
  const sample = record.nameplate.sample;
  const findings = findingBlocks(context);
  const tests = liveTestsBlocks({ ...record, units: input.units });
  return {
    title: [packName(context), ...(sample === undefined ? [] : [words.sample(sample)])].join(' · '),
    demoMark: record.demo ? words.inventedDemo : null,
    standingMark: markOf(standingOf(context)),
    language: 'en-GB',
    newestMs: context.newestMs,
    utcOffsetMinutes: input.utcOffsetMinutes,
    head: sheetHead(context),
    sections: [
      { ...section('result', resultBlocks(context)), headed: false },
      section('findings', findings),
      section('promised', promisedBlocks(context)),
      section('tests', tests),
      section('remedies', remedyBlocks(context)),
      section('ledger', ledgerBlocks(context)),
      section('since', sinceBlocks(input.since, input.units)),
      section('open', openBlocks(context)),
      section('secondReading', secondReadingBlocks(context)),
      section('method', methodBlocks(context)),
      section('afterwards', afterwardsBlocks(context)),
      section('words', wordsBlocks(context)),
      section('attached', attachedBlocks(context)),
      section('answers', answersBlocks(context)),
      section('photos', furtherPhotos(context, findings)),
      section('closing', closingBlocks(context)),
      section('sources', sourcesBlocks(context, tests)),
      section('cautions', cautionBlocks(context)),
    ].filter(({ blocks }) => blocks.length > 0),
    photos: context.photos,
    madeBy: sheetWords.madeBy(appVersion, methodWords.version(definition.title, definition.id, definition.version)),
  };
}

function section(id: SectionId, blocks: Block[]): Section {
  return { id, title: sheetWords.sections[id], headed: true, blocks };
}

/** Photos that no finding shows: those of sound items, and of the pack as it came. */
function furtherPhotos({ photos }: SheetContext, findings: readonly Block[]): Block[] {
  const shown = new Set(
    findings.flatMap((block) => (block.kind === 'finding' ? block.photos.map(({ photoId }) => photoId) : [])),
  );
  const further = photos.filter(({ photoId }) => !shown.has(photoId));
  return further.length === 0 ? [] : [{ kind: 'photos', photos: further }];
}

function cautionBlocks({ day }: SheetContext): Block[] {
  const texts = [sheetWords.cautions.sample(day), ...RISK_SCALE_LINES, sheetWords.cautions.work];
  return [{ kind: 'list', items: texts.map((text) => ({ text })) }];
}
