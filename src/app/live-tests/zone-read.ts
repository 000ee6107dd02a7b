import type { Checklist } from '../../schema/checklist.ts';
import type { DerivationName } from '../../schema/figures.ts';

/**
 * The zone a photo taken for a live test belongs to: that of the first item the checklist reads from such tests. One
 * that reads none has no zone for it, and the photo goes with those of the closed pack.
 */
export function zoneRead({ items }: Checklist, derivations: readonly DerivationName[]): string {
  const item = items.find(({ derive }) => derive !== undefined && derivations.includes(derive.from));
  return item?.zone ?? 'arrival';
}
