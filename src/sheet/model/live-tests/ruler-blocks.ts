import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** Distances taken from photos by a card. */
export function rulerBlocks(_context: LiveContext, _id?: string): Block[] {
  return [];
}
