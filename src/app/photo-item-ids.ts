import type { PackRecord } from '../record/pack-record.ts';

/** The items that have at least one photo. */
export function photoItemIds(record: Pick<PackRecord, 'photos'>): ReadonlySet<string> {
  return new Set(record.photos.flatMap(({ itemIds }) => itemIds));
}
