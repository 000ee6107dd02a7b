import { sharingBars } from '../../../drawing/sharing-bars.ts';
import { parallelResults } from '../../../grading/live-tests/parallel-result.ts';
import type { ParallelResult } from '../../../grading/live-tests/results.ts';
import { formatPercent } from '../../../text/format-number.ts';
import { figureIn, sharePercent } from '../../../text/live-tests/results/figures.ts';
import { parallelWords as say } from '../../../text/live-tests/results/parallel.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block, PlotBlock, ResultBlock, ResultRow } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';
import { PLOT_WIDTH } from './plot-size.ts';
import { closingRows, figureRow, only, row, testName, testTitle } from './test-rows.ts';
import { workedOut } from './worked-out.ts';
import { workingOf } from './working-of.ts';

/** How packs or strings side by side shared a run. */
export function parallelBlocks(context: LiveContext, id?: string): Block[] {
  return workedOut(say.matter, () =>
    only(parallelResults(context), id, ({ run }) => run.id).flatMap((result) => [
      runBlock(result, context),
      ...(result.sharing === null ? [] : [plotBlock(result)]),
    ]),
  );
}

function runBlock(result: ParallelResult, context: LiveContext): ResultBlock {
  const { run, sharing } = result;
  return {
    kind: 'result',
    id: `parallel-${run.id}`,
    title: testTitle(testName(say.one, context.tests.parallelRuns, run.id), run, say.of[run.of]),
    value: sharing === null ? say.unknown : say.worst(sharePercent(sharing.worstDivergenceFrac)),
    marks: [],
    rows: [
      ...(sharing === null ? row(say.labels.why, say.why) : []),
      ...figureRow(say.labels.current, run.currentA, { say: (a) => figureIn(a, 'A') }),
      ...run.shares.flatMap((share) => shareRow(share, result)),
      ...closingRows(run, context),
    ],
    working: sharing === null ? null : workingOf({ formulas: [say.formula], inputs: [], sources: ['definition'] }),
  };
}

type Share = ParallelResult['run']['shares'][number];

/** "pack 2", and the label its tester gave it. */
function nameOf({ number, label }: Share, { run }: ParallelResult): string {
  const name = run.of === 'packs' ? say.pack(number) : say.string(number);
  const given = label?.trim();
  return given ? testWords.titled([name, given]) : name;
}

function shareRow(share: Share, result: ParallelResult): ResultRow[] {
  const { chargeAh, highestA } = share;
  const frac = fracOf(share, result);
  const charge = chargeAh === undefined ? say.notRead : figureIn(chargeAh, 'Ah');
  return row(
    nameOf(share, result),
    frac === null ? charge : say.share(charge, sharePercent(frac)),
    highestA === undefined ? null : say.highest(figureIn(highestA, 'A')),
  );
}

function fracOf({ number }: Share, { sharing }: ParallelResult): number | null {
  return sharing?.shares.find((share) => share.number === number)?.shareFrac ?? null;
}

function plotBlock(result: ParallelResult): PlotBlock {
  const { plot } = say;
  const strings = result.run.shares.map((share) => {
    const shareFrac = fracOf(share, result);
    return {
      label: nameOf(share, result),
      shareFrac,
      text: shareFrac === null ? say.notRead : sharePercent(shareFrac),
    };
  });
  const words = {
    alt: plot.alt(strings.map(({ label, text }) => plot.altOne(label, text))),
    nothing: plot.nothing,
    equal: plot.equal,
    tick: formatPercent,
    share: plot.axis,
  };
  return { kind: 'plot', drawing: sharingBars({ width: PLOT_WIDTH, strings, words }), caption: plot.caption };
}
