import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** What the read-out of the pack gives, and what it asks for. */
export function readOutBlocks(_context: LiveContext, _id?: string): Block[] {
  return [];
}
