import { remedyWords } from '../../text/remedies.ts';
import { clearingWords } from './clearing-words.ts';
import type { Block } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

const say = remedyWords.smallest;

/** The fewest remedies that clear every high and serious risk, each with what it is; both ends where they differ. */
export function smallestSetBlocks(context: SheetContext): Block[] {
  const { definition, grading } = context;
  const { text, remedyIds, isExact } = clearingWords(context);
  if (text === null) return [paragraph(say.nothing)];
  const named = grading.remedies.flatMap(({ remedyId }, place) =>
    remedyIds.includes(remedyId)
      ? [
          {
            text: say.numbered(`${place + 1}`, definition.remedies.find(({ id }) => id === remedyId)?.text ?? remedyId),
          },
        ]
      : [],
  );
  return [
    paragraph(text),
    ...(named.length === 0 ? [] : [{ kind: 'list', items: named } as const]),
    ...(isExact ? [] : [paragraph(say.inexact)]),
  ];
}

function paragraph(text: string): Block {
  return { kind: 'paragraph', text, tone: 'plain' };
}
