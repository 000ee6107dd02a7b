import { cellWords } from '../../../text/live-tests/results/cell.ts';
import { cellMarkWords } from '../../../text/live-tests/results/cell-mark.ts';
import { costWords } from '../../../text/live-tests/results/cost.ts';
import { cutOffWords } from '../../../text/live-tests/results/cut-off.ts';
import { deliveredResultWords } from '../../../text/live-tests/results/delivered.ts';
import { drainWords } from '../../../text/live-tests/results/drain.ts';
import { fuseWords } from '../../../text/live-tests/results/fuse.ts';
import { instrumentResultWords } from '../../../text/live-tests/results/instrument.ts';
import { jointWords } from '../../../text/live-tests/results/joint.ts';
import { leadWords } from '../../../text/live-tests/results/lead.ts';
import { overcurrentWords } from '../../../text/live-tests/results/over-current.ts';
import { parallelWords } from '../../../text/live-tests/results/parallel.ts';
import { rateWords } from '../../../text/live-tests/results/rate.ts';
import { readOutWords } from '../../../text/live-tests/results/read-out.ts';
import { resistanceWords } from '../../../text/live-tests/results/resistance.ts';
import { rulerWords } from '../../../text/live-tests/results/ruler.ts';
import { runWords } from '../../../text/live-tests/results/run.ts';
import type { Block } from '../sheet.ts';
import { cellBlocks } from './cell-blocks.ts';
import { cellMarkBlocks } from './cell-mark-blocks.ts';
import { costBlocks } from './cost-blocks.ts';
import { cutOffBlocks } from './cut-off-blocks.ts';
import { deliveredBlocks } from './delivered-blocks.ts';
import { drainBlocks } from './drain-blocks.ts';
import { fuseBlocks } from './fuse-blocks.ts';
import { instrumentBlocks } from './instrument-blocks.ts';
import { jointBlocks } from './joint-blocks.ts';
import { leadBlocks } from './lead-blocks.ts';
import type { LiveContext } from './live-context.ts';
import { overcurrentBlocks } from './overcurrent-blocks.ts';
import { parallelBlocks } from './parallel-blocks.ts';
import { rateBlocks } from './rate-blocks.ts';
import { readOutBlocks } from './read-out-blocks.ts';
import { resistanceBlocks } from './resistance-blocks.ts';
import { rulerBlocks } from './ruler-blocks.ts';
import { runBlocks } from './run-blocks.ts';
import { runPlotBlocks } from './run-plot-blocks.ts';

/** Matters in the order in which they are read: what it gives, what protects it, what it is made of. */
const MATTERS: readonly { title: string; make: (context: LiveContext) => Block[] }[] = [
  { title: deliveredResultWords.matter, make: deliveredBlocks },
  { title: costWords.matter, make: costBlocks },
  { title: rateWords.matter, make: rateBlocks },
  { title: runWords.matter, make: (context) => [...runPlotBlocks(context), ...runBlocks(context)] },
  { title: overcurrentWords.matter, make: overcurrentBlocks },
  { title: fuseWords.matter, make: fuseBlocks },
  { title: cutOffWords.matter, make: (context) => cutOffBlocks(context) },
  { title: leadWords.matter, make: (context) => leadBlocks(context) },
  { title: jointWords.matter, make: (context) => jointBlocks(context) },
  { title: cellWords.matter, make: (context) => cellBlocks(context) },
  { title: resistanceWords.matter, make: (context) => resistanceBlocks(context) },
  { title: drainWords.matter, make: (context) => drainBlocks(context) },
  { title: parallelWords.matter, make: (context) => parallelBlocks(context) },
  { title: readOutWords.matter, make: (context) => readOutBlocks(context) },
  { title: cellMarkWords.matter, make: (context) => cellMarkBlocks(context) },
  { title: rulerWords.matter, make: (context) => rulerBlocks(context) },
  { title: instrumentResultWords.matter, make: instrumentBlocks },
];

/** All that the live tests come to, matter by matter; nothing of a matter that was not tested. */
export function liveTestsBlocks(context: LiveContext): Block[] {
  return MATTERS.flatMap(({ title, make }): Block[] => {
    const blocks = make(context);
    return blocks.length === 0 ? [] : [{ kind: 'subhead', text: title }, ...blocks];
  });
}
