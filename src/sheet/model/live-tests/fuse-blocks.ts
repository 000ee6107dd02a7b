import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** Which fuse at the terminal fits the pack and its leads, or why none does. */
export function fuseBlocks(_context: LiveContext): Block[] {
  return [];
}
