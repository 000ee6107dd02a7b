import type { Grading } from '../grading/grading.ts';
import type { Checklist, Item } from '../schema/checklist.ts';

/** The stop items that surely failed: while one stands, what would disturb the pack stays closed. */
export function stopFindings(definition: Checklist, grading: Grading): Item[] {
  const failed = new Set(
    grading.items.filter((result) => result.settled && result.possible[0] === 'failed').map((result) => result.itemId),
  );
  return definition.items.filter((item) => item.stop && failed.has(item.id));
}
