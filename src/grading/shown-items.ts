import type { PackRecord } from '../record/pack-record.ts';
import type { Checklist } from '../schema/checklist.ts';
import type { Grading } from './grading.ts';

/** An asked item and the photos from which somebody else could tell. */
export interface ShownItem {
  itemId: string;
  /** In the order in which they were taken; those taken for the item, else those of its zone. */
  photoIds: string[];
}

/**
 * Items that can be told from the photos: asked ones with photos of their own, and those answered by looking whose zone
 * has some (for what shows on arrival, those of the pack as it came too). What is measured, or shows while the pack runs, is on a photo only if one was taken for it.
 *
 * Shape   the graded record in; items in the checklist's order out, each with at least one photo.
 * Check   tests/grading/agreement.test.ts
 */
export function shownItems(definition: Checklist, record: Pick<PackRecord, 'photos'>, grading: Grading): ShownItem[] {
  const results = new Map(grading.items.map((result) => [result.itemId, result]));
  return definition.items.flatMap((item): ShownItem[] => {
    const result = results.get(item.id);
    if (!result?.asked || result.because === 'factExcludes') return [];
    const own = record.photos.filter(({ itemIds }) => itemIds.includes(item.id));
    const byLooking = item.kind === 'look' && item.state !== 'loaded';
    const places = item.state === 'arrival' ? [item.zone, 'arrival'] : [item.zone];
    const photos = own.length > 0 || !byLooking ? own : record.photos.filter(({ zone }) => places.includes(zone));
    return photos.length === 0 ? [] : [{ itemId: item.id, photoIds: photos.map(({ id }) => id) }];
  });
}
