import { SHOWN_COVERAGE_FACTOR } from '../../../calc/meter-uncertainty.ts';
import { capacityResult } from '../../../grading/live-tests/capacity-result.ts';
import type { CapacityResult } from '../../../grading/live-tests/results.ts';
import { formatFixed } from '../../../text/format-number.ts';
import { figureIn, plusMinus, sharePercent } from '../../../text/live-tests/results/figures.ts';
import { rateWords as say } from '../../../text/live-tests/results/rate.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block, ResultBlock, ResultRow } from '../sheet.ts';
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
  const { exponent, exponentUncertainty, runIds } = found;
  return {
    kind: 'result',
    id: 'peukert',
    title: say.exponent,
    value: formatFixed(exponent, 3),
    marks: [],
    rows: [
      ...row(say.labels.means, meaningOf(found)),
      ...uncertaintyRow(exponentUncertainty),
      ...row(say.labels.runs, namesOf(capacity, runIds)),
    ],
    working: workingOf({
      formulas: [say.exponentFormula],
      inputs: runInputs(capacity.runs, runIds),
      uncertainty: exponentUncertainty === null ? null : say.scatterBasis,
      sources: [
        'peukert',
        'nearRate',
        'completeRun',
        ...(exponentUncertainty === null ? [] : (['slopeDeviation'] as const)),
      ],
    }),
  };
}

function meaningOf({ exponent, exponentUncertainty }: NonNullable<CapacityResult['peukert']>): string {
  const off = Math.abs(exponent - 1);
  if (off <= ABOUT_1) return say.about1;
  if (exponentUncertainty !== null && off <= SHOWN_COVERAGE_FACTOR * exponentUncertainty) return say.cannotTell;
  return exponent > 1 ? say.above1 : say.below1;
}

/** Shown with k = 2 it is one in the last digit of the exponent: less would mean nothing beside it. */
const LEAST_UNCERTAINTY = 0.0005;

function uncertaintyRow(uncertainty: number | null): ResultRow[] {
  if (uncertainty === null) return row(say.labels.uncertainty, say.noUncertainty, say.needsThree);
  const shown = uncertainty < LEAST_UNCERTAINTY ? say.under(plusMinus(LEAST_UNCERTAINTY)) : plusMinus(uncertainty);
  return row(say.labels.uncertainty, shown, say.scatter);
}

function namesOf({ runs }: CapacityResult, ids: readonly string[]): string {
  return testWords.listed(ids.map((id) => runName(runs, id)));
}
