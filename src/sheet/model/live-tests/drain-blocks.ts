import { drainResults } from '../../../grading/live-tests/drain-result.ts';
import type { DrainResult } from '../../../grading/live-tests/results.ts';
import { formatFixed } from '../../../text/format-number.ts';
import { drainWords as say } from '../../../text/live-tests/results/drain.ts';
import { figure, figureIn } from '../../../text/live-tests/results/figures.ts';
import type { Block, ResultBlock } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';
import { closingRows, figureRow, only, row, testName, testTitle } from './test-rows.ts';
import { workedOut } from './worked-out.ts';
import { workingOf } from './working-of.ts';

/** What the pack draws by itself, and how long it lasts so. */
export function drainBlocks(context: LiveContext, id?: string): Block[] {
  return workedOut(say.matter, () =>
    only(drainResults(context), id, ({ drain }) => drain.id).map((result) => drainBlock(result, context)),
  );
}

function drainBlock(result: DrainResult, context: LiveContext): ResultBlock {
  const { drain, drainAhPerDay, capacityAh } = result;
  const mode = drain.mode === undefined ? null : say.modes[drain.mode];
  return {
    kind: 'result',
    id: `drain-${drain.id}`,
    title: testTitle(testName(say.one, context.tests.drains, drain.id), drain, mode),
    value: figureIn(drain.currentMa, 'mA'),
    marks: [],
    rows: [
      ...row(say.labels.perDay, figureIn(drainAhPerDay, 'Ah')),
      ...row(say.labels.days, daysWords(result), say.note),
      ...closingRows(drain, context),
    ],
    working: workingOf({
      formulas: [say.formula],
      inputs: [
        { label: say.inputs.current, value: figureIn(drain.currentMa, 'mA') },
        ...figureRow(say.inputs.capacity, capacityAh, { say: (ah) => figureIn(ah, 'Ah') }),
      ].map(({ label, value }) => ({ label, value })),
      sources: ['definition'],
    }),
  };
}

/** Whole days from ten on: the current does not stay so well as to tell hours. */
const WHOLE_DAYS_FROM = 10;

function daysWords({ daysToFlat, capacityAh, drain }: DrainResult): string {
  if (drain.currentMa === 0) return say.notDrawn;
  if (capacityAh === null || daysToFlat === null) return say.noCapacity;
  if (daysToFlat < WHOLE_DAYS_FROM) return say.days(figure(Number(daysToFlat.toPrecision(2))));
  return say.days(daysToFlat < 1e9 ? formatFixed(daysToFlat, 0) : figure(daysToFlat));
}
