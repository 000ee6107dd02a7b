import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** What the pack draws by itself, and how long it lasts so. */
export function drainBlocks(_context: LiveContext, _id?: string): Block[] {
  return [];
}
