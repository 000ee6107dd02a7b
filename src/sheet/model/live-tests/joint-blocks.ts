import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** Joints under load: how warm they get, and their resistance. */
export function jointBlocks(_context: LiveContext, _id?: string): Block[] {
  return [];
}
