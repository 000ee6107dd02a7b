import { sheetWords } from '../../text/sheet.ts';
import type { Block } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

/** The tester's opinion, apart from fact, and the maker's reply or the right to one. */
export function wordsBlocks({ record }: SheetContext): Block[] {
  const { opinion, makerReply, signedAs } = record.words;
  const words = sheetWords.words;
  const label = signedAs?.trim() ? words.opinionOf(signedAs.trim()) : words.opinion;
  return [
    opinion?.trim()
      ? { kind: 'quote', label, text: opinion.trim() }
      : { kind: 'paragraph', text: words.noOpinion, tone: 'plain' },
    makerReply?.trim()
      ? { kind: 'quote', label: words.reply, text: makerReply.trim() }
      : { kind: 'paragraph', text: words.noReply, tone: 'plain' },
  ];
}
