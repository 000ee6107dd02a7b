import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** Delivered against promised at a glance, and what does not count as capacity and why. */
export function deliveredBlocks(_context: LiveContext): Block[] {
  return [];
}
