import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** The instruments and their stated accuracy. */
export function instrumentBlocks(_context: LiveContext, _id?: string): Block[] {
  return [];
}
