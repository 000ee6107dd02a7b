import { cellsResults } from '../../../grading/live-tests/cells-result.ts';
import type { CellSetResult, Outliers } from '../../../grading/live-tests/results.ts';
import { formatTemperature } from '../../../text/format-unit.ts';
import { cellWords as say } from '../../../text/live-tests/results/cell.ts';
import { figureIn, sharePercent, signedIn } from '../../../text/live-tests/results/figures.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block, ResultBlock, ResultRow } from '../sheet.ts';
import { cellPlotBlocks } from './cell-plot-blocks.ts';
import { workingOfCells } from './cell-working.ts';
import type { LiveContext } from './live-context.ts';
import { closingRows, figureRow, only, row, testName, testTitle } from './test-rows.ts';
import { workedOut } from './worked-out.ts';

/** Every round of readings at the cells, or the one with this id, each with its bars. */
export function cellBlocks(context: LiveContext, id?: string): Block[] {
  return workedOut(say.matter, () =>
    only(cellsResults(context), id, ({ set }) => set.id).flatMap((result) => [
      setBlock(result, context),
      ...cellPlotBlocks(result),
    ]),
  );
}

function setBlock(result: CellSetResult, context: LiveContext): ResultBlock {
  const { set } = result;
  return {
    kind: 'result',
    id: `cells-${set.id}`,
    title: testTitle(testName(say.one, context.tests.cellSets, set.id), set),
    value: shownValue(result),
    marks: set.state === 'underLoad' ? [say.underLoadMark] : [],
    rows: [
      ...row(say.labels.state, stateWords(result)),
      ...figureRow(say.labels.load, set.loadA, { say: (a) => figureIn(a, 'A') }),
      ...figureRow(say.labels.temperature, set.cellDegC, { say: (degC) => formatTemperature(degC, context.units) }),
      ...voltageRows(result),
      ...resistanceRows(result),
      ...closingRows(set, context),
    ],
    working: workingOfCells(result),
  };
}

function shownValue({ spread, resistance, readCount }: CellSetResult): string {
  if (spread !== null) return say.spread(figureIn(spread.spreadMv, 'mV'));
  if (readCount > 0) return say.noSpread;
  return resistance === null ? say.nothingRead : say.resistances(figureIn(resistance.meanMohm, 'mΩ'));
}

function stateWords({ set }: CellSetResult): string {
  if (set.state !== 'rested' || set.restedMin === undefined) return say.states[set.state];
  return say.restedFor(figureIn(set.restedMin, 'min'));
}

function voltageRows(result: CellSetResult): ResultRow[] {
  const { spread, readCount, expectedCount, voltageOutliers, restBands } = result;
  if (readCount === 0) return [];
  return [
    ...row(say.labels.read, say.readOf(readCount, expectedCount)),
    ...(spread === null
      ? []
      : [
          ...row(say.labels.lowest, say.at(figureIn(spread.lowV, 'V'), say.cell(spread.lowNumber))),
          ...row(say.labels.highest, say.at(figureIn(spread.highV, 'V'), say.cell(spread.highNumber))),
        ]),
    ...row(say.labels.apart, apartWords(voltageOutliers)),
    ...(restBands === null ? [] : row(say.labels.bands, bandWords(restBands))),
    ...row(say.labels.bms, bmsWords(result)),
  ];
}

function resistanceRows({ set, resistance }: CellSetResult): ResultRow[] {
  if (resistance === null) return [];
  return [
    ...row(
      say.labels.mean,
      figureIn(resistance.meanMohm, 'mΩ'),
      set.resistanceBy === undefined ? say.bySaid : say.by[set.resistanceBy],
    ),
    ...figureRow(say.labels.resistanceSpread, resistance.spreadFrac, { say: (frac) => say.ofMean(sharePercent(frac)) }),
    ...row(say.labels.resistanceApart, apartWords(resistance.outliers)),
  ];
}

function apartWords(outliers: Outliers): string {
  if (!outliers.ok) return say.cannotTell(say.because[outliers.because]);
  return outliers.numbers.length === 0 ? say.apartNone : say.cells(outliers.numbers);
}

/** Cells of one band together, in the order in which the bands are first met. */
function bandWords(bands: NonNullable<CellSetResult['restBands']>): string {
  const met = [...new Set(bands.map(({ band }) => band))];
  if (met.length === 1 && met[0] !== undefined) return say.bands[met[0]];
  return testWords.sentenced(
    met.map((band) =>
      say.band(say.bands[band], say.cells(bands.filter((one) => one.band === band).map(({ number }) => number))),
    ),
  );
}

function bmsWords({ bmsErrors, worstBmsErrorMv }: CellSetResult): string | null {
  const worst = bmsErrors.find(({ errorMv }) => Math.abs(errorMv) === worstBmsErrorMv);
  if (worst === undefined) return null;
  return say.worstBms(say.at(signedIn(worst.errorMv, 'mV'), say.cell(worst.number)));
}
