import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** What a delivered kilowatt-hour costs, and on what that rests. */
export function costBlocks(_context: LiveContext): Block[] {
  return [];
}
