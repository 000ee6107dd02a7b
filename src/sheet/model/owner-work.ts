import type { RemedyResult } from '../../grading/grading.ts';
import { itemRisk } from '../../grading/item-risk.ts';
import { ownerWords as say } from '../../text/owner.ts';
import { sheetWords } from '../../text/sheet.ts';
import { clearingWords } from './clearing-words.ts';
import type { FitList } from './owner-fit.ts';
import { type Found, isSerious } from './owner-found.ts';
import { remedyText } from './remedy-blocks.ts';
import type { SheetContext } from './sheet-context.ts';

/**
 * What to do of one reach, numbered as on the sheet: only what bears on something found. What brings a high or serious
 * finding to medium or lower comes first, of that the fewest that are enough; the rest would also help.
 */
export function workOf(
  context: SheetContext,
  reach: RemedyResult['reach'],
  found: readonly Found[],
): Pick<FitList, 'items' | 'firstCount'> {
  const enoughIds = clearingWords(context).remedyIds;
  const listed = context.grading.remedies
    .map((remedy, place) => ({ remedy, number: place + 1, clears: clearedBy(context, remedy, found) }))
    .filter(({ remedy }) => remedy.reach === reach && remedy.ruledOut === undefined)
    .filter(({ remedy }) => found.some(({ item }) => remedy.itemIds.includes(item.id)));
  const rank = ({ remedy, clears }: (typeof listed)[number]) =>
    clears === null ? 2 : enoughIds.includes(remedy.remedyId) ? 0 : 1;
  return {
    items: listed
      .toSorted((a, b) => rank(a) - rank(b))
      .map(({ remedy, number, clears }) => ({
        text: say.work(number, clears, remedyText(context, remedy.remedyId)),
        ...detailOf(remedy, found),
      })),
    firstCount: listed.filter((one) => rank(one) === 0).length,
  };
}

/** What may make it needless or impossible. */
function detailOf({ open, itemIds }: RemedyResult, found: readonly Found[]): { detail?: string } {
  const isSure = found.some((one) => one.isSure && itemIds.includes(one.item.id));
  const parts = [
    ...(open === undefined ? [] : [sheetWords.remedies.fuseOpen]),
    ...(isSure ? [] : [sheetWords.findings.open]),
  ];
  return parts.length === 0 ? {} : { detail: parts.join('; ') };
}

/** The worst high or serious finding that a remedy alone brings to medium or lower; null where it does not. */
function clearedBy(
  { definition }: SheetContext,
  { remedyId }: RemedyResult,
  found: readonly Found[],
): 'high' | 'serious' | null {
  const settles = definition.remedies.find(({ id }) => id === remedyId)?.settles ?? [];
  const cleared = found.filter(
    ({ item, risk }) =>
      isSerious(risk) &&
      settles.some(({ item: id, leaves }) => id === item.id && !isSerious(itemRisk(item, leaves)?.risk ?? null)),
  );
  if (cleared.length === 0) return null;
  return cleared.some(({ risk }) => risk === 'high') ? 'high' : 'serious';
}
