import type { HazardResult } from '../../grading/grading.ts';
import { type SmallestSet, smallestRemedies } from '../../grading/remedies-smallest.ts';
import { remedyPrice } from '../../grading/remedy-costs.ts';
import { remedyWords } from '../../text/remedies.ts';
import { listOf } from '../../text/sheet.ts';
import type { SheetContext } from './sheet-context.ts';

const say = remedyWords.smallest;

/** The fewest remedies that are enough, in plain words and by id. */
export interface Clearing {
  /** One sentence, or one for each end where they differ; none where nothing is high or serious at either. */
  sentences: string[];
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
  const { low, high } = smallestRemedies(definition, grading, (id) => remedyPrice(record, id));
  const ids = new Set([...low.remedyIds, ...high.remedyIds]);
  return {
    sentences: sentences(endWords(context, low, 'low'), endWords(context, high, 'high')),
    remedyIds: grading.remedies.flatMap(({ remedyId }) => (ids.has(remedyId) ? [remedyId] : [])),
    isExact: low.isExact && high.isExact,
  };
}

/** What is high or serious at its best is so at its worst: nothing at the low end, nothing at all. */
function sentences(atLow: string | null, atHigh: string | null): string[] {
  if (atLow === null) return [];
  return atLow === atHigh ? [atLow] : [say.atWorst(atLow), say.atBest(atHigh ?? say.none)];
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
  const numbers = grading.remedies.flatMap(({ remedyId }, place) =>
    set.remedyIds.includes(remedyId) ? [`${place + 1}`] : [],
  );
  if (uncleared.size === 0) return say.set(numbers, listOf(titles(true)));
  const lost = say.uncleared(listOf(titles(false)));
  return numbers.length === 0 ? lost : `${lost} ${say.rest(numbers, listOf(titles(true)))}`;
}
