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

/** All that the live tests of one record come to. Rulers need the record's photos; without them they have no distance. */
export function liveResults(tested: Tested & Partial<Pick<PackRecord, 'photos'>>): LiveResults {
  return {
    capacity: capacityResult(tested),
    overcurrent: overcurrentResult(tested),
    fuse: fuseResult(tested),
    leads: leadResults(tested),
    mainLeadsAllowableA: mainLeadsAllowableA(tested),
    cells: cellsResults(tested),
    resistances: resistanceResults(tested),
    joints: jointResults(tested),
    drains: drainResults(tested),
    parallelRuns: parallelResults(tested),
    cutOffs: cutOffResults(tested),
    cellMarks: cellMarkResults(tested),
    rulers: rulerResults(tested),
  };
}
