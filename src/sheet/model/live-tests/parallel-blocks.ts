import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** How packs or strings side by side shared a run. */
export function parallelBlocks(_context: LiveContext, _id?: string): Block[] {
  return [];
}
