import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** Leads and bars: their section and what they can carry. */
export function leadBlocks(_context: LiveContext, _id?: string): Block[] {
  return [];
}
