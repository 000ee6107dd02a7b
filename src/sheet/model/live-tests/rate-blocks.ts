import { capacityResult } from '../../../grading/live-tests/capacity-result.ts';
import type { CapacityResult } from '../../../grading/live-tests/results.ts';
import { formatFixed } from '../../../text/format-number.ts';
import { figureIn, sharePercent } from '../../../text/live-tests/results/figures.ts';
import { rateWords as say } from '../../../text/live-tests/results/rate.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block, ResultBlock } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';
import { runInputs, runName } from './run-name.ts';
import { row } from './test-rows.ts';
import { workedOut } from './worked-out.ts';
import { workingOf } from './working-of.ts';

/** What a hard rate leaves of a gentle one, and the exponent, or why neither is given. */
export function rateBlocks(context: LiveContext): Block[] {
  if (context.tests.runs.length === 0) return [];
  return workedOut(say.matter, () => {
    const capacity = capacityResult(context);
    const { retention, peukert } = capacity;
    if (retention === null && peukert === null) return [noneBlock(capacity)];
    return [
      ...(retention === null ? [] : [retentionBlock(capacity, retention)]),
      ...(peukert === null ? [] : [exponentBlock(capacity, peukert)]),
    ];
  });
}

function noneBlock({ completeCount, runs }: CapacityResult): ResultBlock {
  return {
    kind: 'result',
    id: 'rate',
    title: say.matter,
    value: say.none,
    marks: [],
    rows: [
      ...row(say.labels.why, say.needsTwo),
      ...row(say.labels.complete, say.completeOf(completeCount, runs.length)),
    ],
    working: null,
  };
}

function retentionBlock(capacity: CapacityResult, found: NonNullable<CapacityResult['retention']>): ResultBlock {
  const { gentleRunIds, hardRunIds, gentleA, hardA, frac } = found;
  return {
    kind: 'result',
    id: 'retention',
    title: say.retention,
    value: sharePercent(frac),
    marks: [],
    rows: [
      ...row(say.labels.gentle, figureIn(gentleA, 'A'), namesOf(capacity, gentleRunIds)),
      ...row(say.labels.hard, figureIn(hardA, 'A'), namesOf(capacity, hardRunIds)),
    ],
    working: workingOf({
      formulas: [say.retentionFormula],
      inputs: runInputs(capacity.runs, [...gentleRunIds, ...hardRunIds]),
      sources: ['definition', 'nearRate', 'completeRun'],
    }),
  };
}

/** Within this of 1 the figure says nothing of the rate: less than meters and temperatures make. Our choice. */
const ABOUT_1 = 0.005;

function exponentBlock(capacity: CapacityResult, found: NonNullable<CapacityResult['peukert']>): ResultBlock {
  const { exponent, runIds } = found;
  const means = Math.abs(exponent - 1) <= ABOUT_1 ? say.about1 : exponent > 1 ? say.above1 : say.below1;
  return {
    kind: 'result',
    id: 'peukert',
    title: say.exponent,
    value: formatFixed(exponent, 3),
    marks: [],
    rows: [...row(say.labels.means, means), ...row(say.labels.runs, namesOf(capacity, runIds))],
    working: workingOf({
      formulas: [say.exponentFormula],
      inputs: runInputs(capacity.runs, runIds),
      sources: ['peukert', 'nearRate', 'completeRun'],
    }),
  };
}

function namesOf({ runs }: CapacityResult, ids: readonly string[]): string {
  return testWords.listed(ids.map((id) => runName(runs, id)));
}
