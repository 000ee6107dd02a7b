import { sheetWords } from '../../text/sheet.ts';
import { sheetClosingWords } from '../../text/sheet-closing.ts';
import type { Block } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';
import { standingOf } from './sheet-standing.ts';

/** The tester's opinion, apart from fact, and the maker's reply or the right to one. */
export function wordsBlocks(context: SheetContext): Block[] {
  const { opinion, makerReply, signedAs } = context.record.words;
  const words = sheetWords.words;
  const label = signedAs?.trim() ? words.opinionOf(signedAs.trim()) : words.opinion;
  // Of a closed sheet: true of the day it was closed, whatever is attached later.
  const { is } = standingOf(context);
  const noReply = is === 'open' || is === 'revising' ? words.noReply : sheetClosingWords.noReplyWhenClosed;
  return [
    opinion?.trim()
      ? { kind: 'quote', label, text: opinion.trim() }
      : { kind: 'paragraph', text: words.noOpinion, tone: 'plain' },
    makerReply?.trim()
      ? { kind: 'quote', label: words.reply, text: makerReply.trim() }
      : { kind: 'paragraph', text: noReply, tone: 'plain' },
  ];
}
