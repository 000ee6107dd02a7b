import { type CellBarsInput, cellBars } from '../../../drawing/cell-bars.ts';
import type { CellSetResult, Outliers } from '../../../grading/live-tests/results.ts';
import { formatFixed } from '../../../text/format-number.ts';
import { cellWords, cellPlotWords as say } from '../../../text/live-tests/results/cell.ts';
import { figureIn, inOneColumn, sharePercent } from '../../../text/live-tests/results/figures.ts';
import type { PlotBlock } from '../sheet.ts';
import { PLOT_WIDTH } from './plot-size.ts';

/** Bars of the voltages, and of the resistances where two or more were read. */
export function cellPlotBlocks(result: CellSetResult): PlotBlock[] {
  const { set, spread, resistance } = result;
  const state = cellWords.states[set.state];
  return [
    ...(spread === null
      ? []
      : [
          plotBlock({
            what: say.voltages,
            unit: 'V',
            unitText: say.voltageUnit,
            state,
            rows: rowsOf(result, ({ voltageV }) => voltageV),
            apart: result.voltageOutliers,
            spreadText: say.spread(figureIn(spread.spreadMv, 'mV')),
          }),
        ]),
    ...(resistance === null || resistance.spreadFrac === null
      ? []
      : [
          plotBlock({
            what: say.resistances,
            unit: 'mΩ',
            unitText: say.resistanceUnit,
            state,
            rows: rowsOf(result, ({ resistanceMohm }) => resistanceMohm),
            apart: resistance.outliers,
            spreadText: say.spread(sharePercent(resistance.spreadFrac)),
          }),
        ]),
  ];
}

interface CellRow {
  number: number;
  value: number | null;
}

type Cell = CellSetResult['set']['cells'][number];

/** Cells of the nameplate that were not read stand as empty places. */
function rowsOf({ set, expectedCount }: CellSetResult, read: (cell: Cell) => number | undefined): CellRow[] {
  const highest = Math.max(expectedCount ?? 0, ...set.cells.map(({ number }) => number));
  const isWhole = highest <= 2 * Math.max(expectedCount ?? 0, set.cells.length);
  const numbers = isWhole
    ? Array.from({ length: highest }, (_, index) => index + 1)
    : set.cells.map(({ number }) => number);
  return numbers.map((number) => {
    const cell = set.cells.find((one) => one.number === number);
    return { number, value: (cell === undefined ? undefined : read(cell)) ?? null };
  });
}

interface PlotInput {
  what: string;
  unit: string;
  unitText: string;
  state: string;
  rows: readonly CellRow[];
  apart: Outliers;
  spreadText: string;
}

function plotBlock({ what, unit, unitText, state, rows, apart, spreadText }: PlotInput): PlotBlock {
  const values = rows.flatMap(({ value }) => value ?? []);
  const figures = inOneColumn(values, unit);
  const cells: CellBarsInput['cells'] = rows.map(({ number, value }) => ({
    label: cellWords.cell(number),
    value,
    text: value === null ? say.notRead : figures(value),
    flagged: apart.ok && apart.numbers.includes(number),
  }));
  const alt = say.alt(what, [spreadText, ...cells.map(({ label, text }) => say.altCell(label, text))]);
  return {
    kind: 'plot',
    drawing: cellBars({
      width: PLOT_WIDTH,
      cells,
      lowText: say.lowest(figures(Math.min(...values))),
      highText: say.highest(figures(Math.max(...values))),
      spreadText,
      unitText,
      words: { alt, nothing: say.nothing, brokenAxis: say.brokenAxis, flagged: say.flagged, tick: formatFixed },
    }),
    caption: say.caption(what, state),
  };
}
