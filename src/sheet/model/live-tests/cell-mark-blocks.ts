import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** Codes on cells, taken apart. */
export function cellMarkBlocks(_context: LiveContext, _id?: string): Block[] {
  return [];
}
