import type { CutOffKind } from '../../../schema/live-tests/cut-off.ts';
import type { Block } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';

/** The cut-offs that were tried, kind by kind; or those of some kinds. */
export function cutOffBlocks(_context: LiveContext, _kinds?: readonly CutOffKind[]): Block[] {
  return [];
}
