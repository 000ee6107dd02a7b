import type { Block, Sheet } from './sheet.ts';

/** The letter as plain text, for an e-mail or a form: the same words in the same order. */
export function letterText({ head, sections, madeBy }: Sheet): string {
  const blocks = sections.flatMap((section) => section.blocks.map(blockText));
  return `${[head.overline, head.name, head.line, head.marks.join(' · '), head.caution, ...blocks, madeBy]
    .filter((part) => part !== '')
    .join('\n\n')}\n`;
}

function blockText(block: Block): string {
  switch (block.kind) {
    case 'paragraph':
      return block.text;
    case 'subhead':
      return block.text.toUpperCase();
    case 'list':
      return block.items.map(({ text }) => `- ${text}`).join('\n');
    case 'quote':
      return `${block.label}:\n${block.text}`;
    default:
      throw new RangeError(`letterText: a letter has only paragraphs, subheads, lists and quotes, got ${block.kind}`);
  }
}
