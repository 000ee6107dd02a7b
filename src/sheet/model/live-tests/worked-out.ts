import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block } from '../sheet.ts';

/**
 * The blocks of one matter. A figure so far out that a calculation or a plot cannot hold it takes no other matter with
 * it: that is said in place of the results, and what was typed stays stored.
 */
export function workedOut(matter: string, make: () => Block[]): Block[] {
  try {
    const blocks = make();
    if (blocks.every(canBeDrawn)) return blocks;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
  }
  return [{ kind: 'paragraph', text: testWords.outOfReach(matter), tone: 'caution' }];
}

/** Steps between numbers run out at the far ends of them, and a scale then gives none. */
function canBeDrawn(block: Block): boolean {
  return block.kind !== 'plot' || hasOnlyFinite(block.drawing);
}

function hasOnlyFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return true;
  return (Array.isArray(value) ? value : Object.values(value)).every(hasOnlyFinite);
}
