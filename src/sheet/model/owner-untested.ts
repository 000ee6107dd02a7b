import { capacityResult } from '../../grading/live-tests/capacity-result.ts';
import { cutOffResults } from '../../grading/live-tests/cut-off-results.ts';
import { fuseResult } from '../../grading/live-tests/fuse-result.ts';
import { protectionsOf } from '../../grading/side-by-side/protections.ts';
import { PROTECTION_KINDS } from '../../grading/side-by-side/side-by-side.ts';
import { ownerWords as say } from '../../text/owner.ts';
import type { FitList } from './owner-fit.ts';
import type { SheetContext } from './sheet-context.ts';

/** What nobody tried or looked at, counted by zone; safety items by name where the page has room. */
export function untested(context: SheetContext): Pick<FitList, 'items' | 'firstCount'> {
  const { grading, itemOf, record } = context;
  const untried = untriedProtections(record);
  const first = [
    ...(hasDelivered(record) ? [] : [say.noRun]),
    ...(untried.length === 0 ? [] : [say.untried(untried)]),
    ...(grading.itemCount === grading.askedCount ? [] : [say.shortRoute(grading.askedCount, grading.itemCount)]),
    ...openByZone(context),
    ...(grading.unlookedCount === 0 ? [] : [say.unlooked(grading.unlookedCount)]),
  ];
  const safety = grading.openSafetyItemIds.map((id) => say.openSafety(itemOf(id).title));
  return { items: [...first, say.otherSamples, ...safety].map((text) => ({ text })), firstCount: first.length };
}

function openByZone({ grading, definition }: SheetContext): string[] {
  const openCount = grading.askedCount - grading.settledCount;
  if (openCount === 0) return [];
  const zones = definition.zones.flatMap(({ id, title }) => {
    const zone = grading.zones.find(({ zoneId }) => zoneId === id);
    const count = zone === undefined ? 0 : zone.askedCount - zone.settledCount;
    return count === 0 ? [] : [{ title, count }];
  });
  return [say.open({ count: openCount, asked: grading.askedCount, safety: grading.openSafetyItemIds.length, zones })];
}

/** In words; heat on the side that was not tried, where one was. */
function untriedProtections(record: SheetContext['record']): string[] {
  const protections = toldOrNull(() =>
    protectionsOf({ cutOffs: cutOffResults(record), fuse: fuseResult(record) }, record.tests),
  );
  if (protections === null) return PROTECTION_KINDS.map((kind) => say.protections[kind]);
  return protections.flatMap(({ kind, state, sides }) => {
    if (state === 'notTested') return [say.protections[kind]];
    return sides === null || sides === 'both' ? [] : [say.heatUntried[sides]];
  });
}

function hasDelivered(record: SheetContext['record']): boolean {
  return toldOrNull(() => capacityResult(record).delivered) !== null;
}

/** A figure so far out that a calculation refuses it tells nothing. */
function toldOrNull<T>(told: () => T): T | null {
  try {
    return told();
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
