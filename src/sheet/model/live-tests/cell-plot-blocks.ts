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
          ...plots({
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
          ...plots({
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

/** A row takes 17 of the 900 units that a page of either paper has. Our choice: with head, axis and key it fits. */
const MOST_ROWS = 40;

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

/** One drawing, or several on one scale where the cells would fill more than a page. */
function plots(input: PlotInput): PlotBlock[] {
  const values = input.rows.flatMap(({ value }) => value ?? []);
  const starts = Array.from({ length: Math.ceil(input.rows.length / MOST_ROWS) }, (_, part) => part * MOST_ROWS);
  return starts.map((start) => plotBlock({ ...input, rows: input.rows.slice(start, start + MOST_ROWS) }, values));
}

function plotBlock(input: PlotInput, values: readonly number[]): PlotBlock {
  const { what, unit, unitText, state, rows, apart, spreadText } = input;
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
      allValues: values,
      lowText: say.lowest(figures(Math.min(...values))),
      highText: say.highest(figures(Math.max(...values))),
      spreadText,
      unitText,
      words: { alt, nothing: say.nothing, brokenAxis: say.brokenAxis, flagged: say.flagged, tick: formatFixed },
    }),
    caption: say.caption(what, state),
  };
}
