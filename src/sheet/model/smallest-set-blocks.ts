import { type SmallestSet, smallestRemedies } from '../../grading/remedies-smallest.ts';
import { remedyPrice } from '../../grading/remedy-costs.ts';
import { remedyWords } from '../../text/remedies.ts';
import { listOf } from '../../text/sheet.ts';
import type { Block } from './sheet.ts';
import type { SheetContext } from './sheet-context.ts';

const say = remedyWords.smallest;

/** The fewest remedies that clear every high and serious risk, in plain words; both ends where they differ. */
export function smallestSetBlocks(context: SheetContext): Block[] {
  const { definition, grading, record } = context;
  const { low, high } = smallestRemedies(definition, grading, (id) => remedyPrice(record, id));
  if (isNothing(low)) return [paragraph(say.nothing)];
  const alike = sentenceOf(context, low) === sentenceOf(context, high);
  const named = numbersOf(context, [...new Set([...low.remedyIds, ...high.remedyIds])]);
  return [
    ...(alike
      ? [paragraph(sentenceOf(context, low))]
      : [
          paragraph(say.atWorst(sentenceOf(context, low))),
          paragraph(say.atBest(isNothing(high) ? say.none : sentenceOf(context, high))),
        ]),
    ...(named.length === 0
      ? []
      : [{ kind: 'list', items: named.map(({ number, text }) => ({ text: say.numbered(number, text) })) } as const]),
    ...(low.isExact && high.isExact ? [] : [paragraph(say.inexact)]),
  ];
}

function isNothing({ remedyIds, unclearedHazardIds }: SmallestSet): boolean {
  return remedyIds.length === 0 && unclearedHazardIds.length === 0;
}

function sentenceOf(context: SheetContext, { remedyIds, unclearedHazardIds }: SmallestSet): string {
  const numbers = numbersOf(context, remedyIds).map(({ number }) => number);
  if (unclearedHazardIds.length === 0) return say.set(numbers);
  const uncleared = say.uncleared(listOf(unclearedHazardIds.map((id) => context.hazardOf(id).title)));
  return numbers.length === 0 ? uncleared : `${uncleared} ${say.rest(numbers)}`;
}

/** As numbered in the printed order. */
function numbersOf({ definition, grading }: SheetContext, remedyIds: readonly string[]) {
  return grading.remedies.flatMap(({ remedyId }, place) =>
    remedyIds.includes(remedyId)
      ? [{ number: `${place + 1}`, text: definition.remedies.find(({ id }) => id === remedyId)?.text ?? remedyId }]
      : [],
  );
}

function paragraph(text: string): Block {
  return { kind: 'paragraph', text, tone: 'plain' };
}
