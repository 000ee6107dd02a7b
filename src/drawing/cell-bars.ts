import type { Drawing, Mark } from './display-list.ts';
import { axisBreak, barBreak } from './plots/axis-break.ts';
import { BOTTOM_AXIS_HEIGHT, bottomAxis } from './plots/axis-marks.ts';
import { type BarColumns, barColumns, barRowWords } from './plots/bar-columns.ts';
import { type CellAxis, cellAxis } from './plots/cell-axis.ts';
import { emptyFrame } from './plots/empty-frame.ts';
import { hatchMarks } from './plots/hatch.ts';
import { keyRows } from './plots/key-rows.ts';
import { type Box, labelRoom } from './plots/label-room.ts';
import { linearScale, type Scale } from './plots/linear-scale.ts';
import { noteRows } from './plots/note-rows.ts';
import { requireFinite } from './plots/require-finite.ts';
import { roomyTicks } from './plots/roomy-ticks.ts';
import { BRACKET_HEIGHT, spreadBracket } from './plots/spread-bracket.ts';

export interface CellBar {
  label: string;
  value: number | null;
  /** Its figure, or why there is none. */
  text: string;
  flagged: boolean;
}

export interface CellBarsWords {
  alt: string;
  nothing: string;
  /** Said below an axis that does not begin at 0. */
  brokenAxis: string;
  /** In the key, if a cell is flagged. */
  flagged: string;
  tick: (value: number, decimals: number) => string;
}

export interface CellBarsInput {
  width: number;
  cells: readonly CellBar[];
  /** Of all cells, where these are only some of them: scale and bracket are theirs. */
  allValues?: readonly number[];
  /** At the lowest and the highest bar; empty for none. */
  lowText: string;
  highText: string;
  /** At the bracket between them; empty for none. */
  spreadText: string;
  /** Title of the axis with its unit. */
  unitText: string;
  words: CellBarsWords;
}

/** Rows of up to sixteen cells, and of more. */
const ROW_HEIGHT = { few: 20, many: 17 };
const MANY = 16;
const BAR_HEIGHT = 8;
const FLAGGED_HEIGHT = 12;
const BREAK_AT = 9;

/**
 * One bar per cell, lying, so that a figure stands beside each; lowest and highest are bracketed above them. A cell that
 * was not read is a dashed empty place, a flagged one is hatched. The axis shows the spread, and says so where that means
 * it does not begin at 0.
 */
export function cellBars(input: CellBarsInput): Drawing {
  const { width, cells, words } = input;
  const values = input.allValues ?? cells.flatMap((cell) => cell.value ?? []);
  requireFinite('cellBars: width', [width]);
  requireFinite('cellBars: value', values);
  if (cells.length === 0) return emptyFrame({ width, height: 80, alt: words.alt, nothing: words.nothing });
  const rows = cells.map((cell) => ({ ...cell, strong: cell.flagged }));
  const columns = barColumns(rows, width);
  const axis = cellAxis(values);
  const x = linearScale(axis, columns.left, columns.right);
  const rowHeight = cells.length > MANY ? ROW_HEIGHT.many : ROW_HEIGHT.few;
  const top = values.length === 0 ? 0 : BRACKET_HEIGHT;
  const panel: Box = { ...columns, top, bottom: top + cells.length * rowHeight + 4 };
  const note = noteRows(axis.isBroken && values.length > 0 ? words.brokenAxis : '', width);
  const key = keyRows(cells.some((cell) => cell.flagged) ? [{ text: words.flagged, sign: flaggedSign }] : [], width);
  const axisBottom = panel.bottom + (values.length === 0 ? 0 : BOTTOM_AXIS_HEIGHT);
  return {
    width,
    height: axisBottom + note.height + key.height + 2,
    alt: words.alt,
    marks: [
      ...(values.length === 0 ? [] : spreadMarks(input, { panel, x, values })),
      ...(values.length === 0 ? [] : axisMarks(input, { panel, x, axis })),
      ...rows.flatMap((row, place) => {
        const middle = panel.top + (place + 0.5) * rowHeight;
        return [...barMarks(row, { columns, x, axis, middle }), ...barRowWords(row, { columns, width, middle })];
      }),
      ...note.marksAt(axisBottom),
      ...key.marksAt(axisBottom + note.height),
    ],
  };
}

interface Frame {
  panel: Box;
  x: Scale;
}

function spreadMarks(input: CellBarsInput, { panel, x, values }: Frame & { values: readonly number[] }): Mark[] {
  const lowX = x(Math.min(...values));
  const highX = x(Math.max(...values));
  const guides = [lowX, highX].map(
    (at): Mark => ({
      kind: 'line',
      points: [
        [at, panel.top],
        [at, panel.bottom],
      ],
      stroke: { ink: 'muted', width: 0.8, dash: [2, 3] },
    }),
  );
  return [...guides, ...spreadBracket({ ...input, lowX, highX })];
}

function axisMarks({ width, words, unitText }: CellBarsInput, { panel, x, axis }: Frame & { axis: CellAxis }): Mark[] {
  const ticks = roomyTicks({ range: axis, length: panel.right - panel.left, tick: words.tick });
  const marks = bottomAxis({
    panel,
    width,
    title: unitText,
    room: labelRoom({ left: 0, top: 0, right: width, bottom: panel.bottom + BOTTOM_AXIS_HEIGHT }),
    ticks: ticks.values.map((value) => ({ place: x(value), text: words.tick(value, ticks.decimals) })),
  });
  return axis.isBroken ? [...marks, ...axisBreak(panel.left + BREAK_AT, panel.bottom)] : marks;
}

interface BarPlace {
  columns: BarColumns;
  x: Scale;
  axis: CellAxis;
  middle: number;
}

function barMarks({ value, flagged }: CellBar, { columns, x, axis, middle }: BarPlace): Mark[] {
  if (value === null) return [emptyPlace(columns, middle)];
  const foot = x(axis.isBroken ? axis.low : 0);
  const height = flagged ? FLAGGED_HEIGHT : BAR_HEIGHT;
  const box: Box = {
    left: Math.min(foot, x(value)),
    right: Math.max(foot, x(value)),
    top: middle - height / 2,
    bottom: middle + height / 2,
  };
  const bar = flagged ? flaggedBar(box) : [barShape(box)];
  return axis.isBroken ? [...bar, barBreak(columns.left + BREAK_AT, middle, height)] : bar;
}

function barShape({ left, right, top, bottom }: Box): Mark {
  return {
    kind: 'shape',
    shape: { form: 'box', x: left, y: top, width: right - left, height: bottom - top },
    fill: 'ink',
  };
}

function flaggedBar(box: Box): Mark[] {
  const { left, right, top, bottom } = box;
  return [
    ...hatchMarks(box, 5, { ink: 'ink', width: 1.1 }),
    {
      kind: 'shape',
      shape: { form: 'box', x: left, y: top, width: right - left, height: bottom - top },
      stroke: { ink: 'ink', width: 1.4 },
    },
  ];
}

function flaggedSign(x: number, y: number): Mark[] {
  return flaggedBar({ left: x - 7, right: x + 6, top: y - 5, bottom: y + 5 });
}

function emptyPlace({ left, right }: BarColumns, middle: number): Mark {
  return {
    kind: 'shape',
    shape: { form: 'box', x: left, y: middle - BAR_HEIGHT / 2, width: right - left, height: BAR_HEIGHT },
    stroke: { ink: 'muted', width: 1, dash: [3, 3] },
  };
}
