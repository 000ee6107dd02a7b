import type { Grading } from '../../src/grading/grading.ts';

/** Every item with why its set is what it is, and the set. */
export function itemTable(grading: Grading): Record<string, string> {
  return Object.fromEntries(
    grading.items.map(({ itemId, because, possible }) => [itemId, `${because}: ${possible.join(' ')}`]),
  );
}
