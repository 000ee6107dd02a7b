import type { Block, Sheet } from '../model/sheet.ts';
import type { Desk } from './desk.ts';
import { findingChunks, remedyChunks } from './finding-chunks.ts';
import type { Chunk } from './flow.ts';
import { gridChunks } from './grid-chunks.ts';
import { hashChunks } from './hash-chunks.ts';
import { headChunks } from './head-chunks.ts';
import { photosChunks } from './photo-chunks.ts';
import { listChunks, paragraphChunks, quoteChunks, sectionHeadChunks, subheadChunks } from './prose-chunks.ts';
import { plotChunks, resultCardChunks } from './result-card-chunks.ts';
import { figuresChunks, ruleChunks, verdictChunks, zonesChunks } from './result-chunks.ts';
import { answersChunks, ledgerChunks, tableChunks } from './table-chunks.ts';

/** The whole sheet as chunks, in reading order. */
export function layOut(desk: Desk, sheet: Sheet): Chunk[] {
  return clearOfGround([
    ...headChunks(desk, sheet.head).map(onGround),
    ...sheet.sections.flatMap((section) => {
      const chunks = section.blocks.flatMap((block, place) => {
        const laid = blockChunks(section.wide ? wideDesk(desk) : desk, block, section.headed || section.wide === true);
        // A SHA-256 stands on the page that says whose it is.
        if (section.blocks[place + 1]?.kind === 'hash') return laid.map((chunk) => ({ ...chunk, keepWithNext: true }));
        // Words that lead a section in do not stay behind when what they lead to begins on the next page.
        if (section.headed && place === 0 && block.kind === 'paragraph' && section.blocks.length > 1) {
          return laid.map((chunk) => ({ ...chunk, keepWithNext: true }));
        }
        const isResult = ON_GROUND.includes(block.kind) && !section.headed && !section.wide;
        return isResult ? laid.map(onGround) : laid;
      });
      if (section.wide) return offTheGround(chunks);
      return section.headed ? [...sectionHeadChunks(desk, section.title), ...chunks] : chunks;
    }),
  ]);
}

/** Blocks of the result that stand on the ruled ground of the first page. */
const ON_GROUND: readonly Block['kind'][] = ['verdict', 'rule', 'figures', 'paragraph', 'zones'];

function onGround(chunk: Chunk): Chunk {
  return { ...chunk, onGround: true };
}

/** The ground behind the head ends a little below it: what follows keeps clear of its edge. */
function offTheGround(chunks: readonly Chunk[]): Chunk[] {
  return chunks.map((chunk, place) => (place === 0 ? { ...chunk, space: chunk.space + 14 } : chunk));
}

/** The text column over the label column as well. */
function wideDesk(desk: Desk): Desk {
  const { left, fullWidth } = desk.frame;
  return { ...desk, frame: { ...desk.frame, textLeft: left, textWidth: fullWidth } };
}

/** The first under the ruled ground stands clear of its lower edge. */
function clearOfGround(chunks: Chunk[]): Chunk[] {
  const isFirstUnder = (place: number) => chunks[place - 1]?.onGround === true && chunks[place]?.onGround !== true;
  return chunks.map((chunk, place) => (isFirstUnder(place) ? { ...chunk, space: Math.max(chunk.space, 17) } : chunk));
}

/** Short lines over the full width need less between them: the page is one, and full. */
const UNHEADED_ITEM_SPACE = 2;

/** The result stands across the full width, everything else in the text column. */
function blockChunks(desk: Desk, block: Block, headed: boolean): Chunk[] {
  const { frame } = desk;
  const full = { x: frame.left, width: frame.fullWidth };
  const column = { x: frame.textLeft, width: frame.textWidth };
  const wide = wideDesk(desk);
  switch (block.kind) {
    case 'verdict':
      return verdictChunks(desk, block);
    case 'rule':
      return ruleChunks(desk, block);
    case 'figures':
      return figuresChunks(desk, block, headed ? column : full);
    case 'zones':
      return zonesChunks(desk, block);
    case 'finding':
      return findingChunks(desk, block);
    case 'remedy':
      return remedyChunks(desk, block);
    case 'ledger':
      return ledgerChunks(desk, block);
    case 'answers':
      return answersChunks(desk, block);
    case 'photos':
      return photosChunks(desk, block.photos, { ...full, onlyHeight: 240 });
    case 'table':
      return tableChunks(desk, block);
    case 'list':
      return listChunks(headed ? desk : wide, block, headed ? undefined : UNHEADED_ITEM_SPACE);
    case 'quote':
      return quoteChunks(desk, block);
    case 'paragraph':
      return paragraphChunks(headed ? desk : wide, block);
    case 'hash':
      return hashChunks(desk, block);
    case 'subhead':
      return subheadChunks(headed ? desk : wide, block.text);
    case 'result':
      return resultCardChunks(desk, block);
    case 'plot':
      return plotChunks(desk, block);
    case 'grid':
      return gridChunks(desk, block);
  }
}
