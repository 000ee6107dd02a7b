import type { PackRecord } from '../../record/pack-record.ts';
import type { Tested } from '../judged.ts';
import { capacityResult } from './capacity-result.ts';
import { cellMarkResults } from './cell-mark-results.ts';
import { cellsResults } from './cells-result.ts';
import { cutOffResults } from './cut-off-results.ts';
import { drainResults } from './drain-result.ts';
import { fuseResult } from './fuse-result.ts';
import { jointResults } from './joint-result.ts';
import { leadResults, mainLeadsAllowableA } from './lead-result.ts';
import { overcurrentResult } from './overcurrent-result.ts';
import { parallelResults } from './parallel-result.ts';
import { resistanceResults } from './resistance-result.ts';
import type { LiveResults } from './results.ts';
import { rulerResults } from './ruler-results.ts';

/** Rulers need the record's photos; without them they have no distance. */
export type LiveTested = Tested & Partial<Pick<PackRecord, 'photos'>>;

/** How each matter of the live tests is worked out. */
export const LIVE_RESULT_OF: { readonly [M in keyof LiveResults]: (tested: LiveTested) => LiveResults[M] } = {
  capacity: capacityResult,
  overcurrent: overcurrentResult,
  fuse: fuseResult,
  leads: leadResults,
  mainLeadsAllowableA,
  cells: cellsResults,
  resistances: resistanceResults,
  joints: jointResults,
  drains: drainResults,
  parallelRuns: parallelResults,
  cutOffs: cutOffResults,
  cellMarks: cellMarkResults,
  rulers: rulerResults,
};

/** All that the live tests of one record come to. */
export function liveResults(tested: LiveTested): LiveResults {
  const results = Object.entries(LIVE_RESULT_OF).map(([matter, resultOf]) => [matter, resultOf(tested)]);
  return Object.fromEntries(results) as LiveResults;
}
