import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** What the pack does about too much current: the verdict, every trip and the plot. */
export function overcurrentBlocks(_context: LiveContext): Block[] {
  return [];
}
