import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** Resistances from two loads or a pulse. */
export function resistanceBlocks(_context: LiveContext, _id?: string): Block[] {
  return [];
}
