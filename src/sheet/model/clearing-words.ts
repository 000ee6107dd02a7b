import type { HazardResult, RemedyResult } from '../../grading/grading.ts';
import { type SmallestSet, smallestRemedies } from '../../grading/remedies-smallest.ts';
import { remedyPrice } from '../../grading/remedy-costs.ts';
import { remedyWords } from '../../text/remedies.ts';
import { listOf } from '../../text/sheet.ts';
import type { SheetContext } from './sheet-context.ts';

const say = remedyWords.smallest;

/** The fewest remedies that are enough, in plain words and by id. */
export interface Clearing {
  /** Both ends where they differ; null where nothing is high or serious at either. */
  text: string | null;
  /** Those of both ends, in printed order. */
  remedyIds: string[];
  isExact: boolean;
}

/**
 * Which remedies bring every high and serious risk to medium or lower: said once, for the verdict on the sheet and on
 * the owner's page and for the screen of remedies, so that no two of them can differ.
 *
 * Source  grading/remedies-smallest.ts; numbers as printed under Remedies
 * Check   tests/sheet/clearing-words.test.ts
 */
export function clearingWords(context: SheetContext): Clearing {
  const { definition, grading, record } = context;
  const fewest = (remedies: readonly RemedyResult[]) =>
    smallestRemedies(definition, { ...grading, remedies: [...remedies] }, (id) => remedyPrice(record, id));
  const any = fewest(grading.remedies);
  // Where what an owner can do is enough, nobody is sent to a workshop for the sake of one remedy fewer.
  const outside = fewest(grading.remedies.filter(({ reach }) => reach === 'outside'));
  const at = (end: 'low' | 'high') => (grading.verdict[end] === 'notAsItComes' ? outside : any)[end];
  const [low, high] = [at('low'), at('high')];
  const ids = new Set([...low.remedyIds, ...high.remedyIds]);
  return {
    text: textOf(context, low, high),
    remedyIds: grading.remedies.flatMap(({ remedyId }) => (ids.has(remedyId) ? [remedyId] : [])),
    isExact: low.isExact && high.isExact,
  };
}

/** The same as advice under a verdict. */
export function clearingAdvice(context: SheetContext): string[] {
  const { text } = clearingWords(context);
  return text === null ? [] : [text];
}

/** What is high or serious at its best is so at its worst: nothing at the low end, nothing at all. */
function textOf(context: SheetContext, low: SmallestSet, high: SmallestSet): string | null {
  const atLow = endWords(context, low, 'low');
  const atHigh = endWords(context, high, 'high');
  if (atLow === null || atLow === atHigh) return atLow;
  const isAllCleared = low.unclearedHazardIds.length === 0 && high.unclearedHazardIds.length === 0;
  const best = atHigh === null ? say.none : isAllCleared ? say.enough(numbersOf(context, high)) : atHigh;
  return `${say.atWorst(atLow)} ${say.atBest(best)}`;
}

/** As numbered in the printed order. */
function numbersOf({ grading }: SheetContext, { remedyIds }: SmallestSet): string[] {
  return grading.remedies.flatMap(({ remedyId }, place) => (remedyIds.includes(remedyId) ? [`${place + 1}`] : []));
}

function endWords(context: SheetContext, set: SmallestSet, end: keyof HazardResult['risk']): string | null {
  const { grading, hazardOf } = context;
  const serious = grading.hazards.filter(({ risk }) => risk[end] === 'high' || risk[end] === 'serious');
  const uncleared = new Set(set.unclearedHazardIds);
  const titles = (isCleared: boolean) =>
    serious
      .filter(({ hazardId }) => uncleared.has(hazardId) !== isCleared)
      .map(({ hazardId }) => hazardOf(hazardId).title);
  if (serious.length === 0) return null;
  const numbers = numbersOf(context, set);
  if (uncleared.size === 0) return say.set(numbers, listOf(titles(true)));
  const lost = say.uncleared(listOf(titles(false)));
  return numbers.length === 0 ? lost : `${lost} ${say.rest(numbers, listOf(titles(true)))}`;
}
