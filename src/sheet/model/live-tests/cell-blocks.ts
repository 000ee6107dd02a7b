import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** Every round of readings at the cells, or the one with this id. */
export function cellBlocks(_context: LiveContext, _id?: string): Block[] {
  return [];
}
