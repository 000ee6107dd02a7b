import { isFinding, itemRisk } from '../../grading/item-risk.ts';
import type { Item, RiskLevel } from '../../schema/checklist.ts';
import { type Grade, gradeRank } from '../../schema/grade.ts';
import type { SheetContext } from './sheet-context.ts';

/** An item found weak or failed. */
export interface Found {
  item: Item;
  risk: RiskLevel | null;
  /** False: a fact that is open may still rule the item out. */
  isSure: boolean;
}

/**
 * What was found: items graded weak or failed, and those measured far enough that nothing better is left, then by the
 * worse of the two. What nobody looked at is not found, however bad it may turn out; nor is what was graded passable.
 *
 * Check   tests/sheet/owner-found.test.ts
 */
export function foundOf({ grading, itemOf }: SheetContext): Found[] {
  const graded = new Set(grading.findings.map(({ itemId }) => itemId));
  return grading.items.flatMap(({ itemId, possible, because }): Found[] => {
    const grades = possible.filter((outcome): outcome is Grade => outcome !== 'doesNotApply');
    const isMeasured = because === 'measured' && grades.length > 0 && grades.every(isFinding);
    if (!graded.has(itemId) && !isMeasured) return [];
    const item = itemOf(itemId);
    const [worst] = grades.toSorted((one, other) => gradeRank(other) - gradeRank(one));
    const risk = worst === undefined ? null : (itemRisk(item, worst)?.risk ?? null);
    return [{ item, risk, isSure: !possible.includes('doesNotApply') }];
  });
}

export function isSerious(risk: RiskLevel | null): boolean {
  return risk === 'high' || risk === 'serious';
}
