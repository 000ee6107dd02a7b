import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** The runs over one another, against time and against charge; or one of them. */
export function runPlotBlocks(_context: LiveContext, _id?: string): Block[] {
  return [];
}
