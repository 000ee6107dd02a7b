import type { Attachment } from '../../schema/closing.ts';
import { formatDay } from '../../text/format-day.ts';
import { sheetClosingWords } from '../../text/sheet-closing.ts';
import type { Block } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

/** "Attached after closing": what the tester found to be wrong, and apart from it the maker's words. */
export function attachedBlocks(context: SheetContext): Block[] {
  return [...attachedOf('correction', context), ...attachedOf('makerReply', context)];
}

function attachedOf(kind: Attachment['kind'], { record }: SheetContext): Block[] {
  const say = sheetClosingWords.attached;
  const found = record.attachments.filter((one) => one.kind === kind);
  if (found.length === 0) return [];
  return [
    { kind: 'subhead', text: say[kind] },
    { kind: 'paragraph', text: say[`${kind}Lead`], tone: 'muted' },
    ...found.map(({ text, to, from, on }): Block => {
      const revision = record.closings.find(({ sha256 }) => sha256 === to)?.revision;
      const day = on === undefined ? undefined : formatDay(on);
      return { kind: 'quote', label: say.label({ kind, revision, from: from?.trim(), on: day }), text: text.trim() };
    }),
  ];
}
