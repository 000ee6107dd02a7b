import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** What a hard rate leaves of a gentle one, and the exponent, or why neither is given. */
export function rateBlocks(_context: LiveContext): Block[] {
  return [];
}
