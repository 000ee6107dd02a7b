import type { Mark, PathStep } from '../display-list.ts';
import type { PackLayout } from './pack-layout.ts';
import { type ZoneState, zoneInk, zoneStroke } from './zone-look.ts';

/** More would be thinner than a thumb can tell apart on a phone 320 px wide. */
export const MOST_CELLS_DRAWN = 16;

/** Widest a cell is drawn against its height, so that one or two cells still look like cells. */
const WIDEST_TO_HEIGHT = 0.75;

const TERMINAL_HEIGHT = 6;

export interface CellPlace {
  left: number;
  width: number;
  middleX: number;
  /** Middles of its two terminals. */
  leftTerminalX: number;
  rightTerminalX: number;
}

export function cellPlaces(count: number, { cells }: PackLayout): CellPlace[] {
  const pitch = Math.min((cells.right - cells.left) / count, (cells.bottom - cells.top) * WIDEST_TO_HEIGHT);
  const start = (cells.left + cells.right - pitch * count) / 2;
  const gap = Math.min(5, pitch * 0.14);
  const width = pitch - gap;
  return Array.from({ length: count }, (_, place) => {
    const left = start + place * pitch + gap / 2;
    return {
      left,
      width,
      middleX: left + width / 2,
      leftTerminalX: left + width * 0.2,
      rightTerminalX: left + width * 0.8,
    };
  });
}

/** Where a vent stands on a cell, and where the bus bars run. */
export function ventY({ cells }: PackLayout): number {
  return cells.top + 13;
}
export function terminalTopY({ cells }: PackLayout): number {
  return cells.top - TERMINAL_HEIGHT;
}

export function cellMarks(
  cells: CellPlace[],
  layout: PackLayout,
  states: { cells: ZoneState; vents: ZoneState; wiring: ZoneState },
): Mark[] {
  return [
    shelfMark(layout),
    ...cells.flatMap((cell) => oneCell(cell, layout, states)),
    ...busBars(cells, layout, states.wiring),
  ];
}

function oneCell(cell: CellPlace, layout: PackLayout, states: { cells: ZoneState; vents: ZoneState }): Mark[] {
  const { top, bottom } = layout.cells;
  const stroke = zoneStroke(states.cells, 1.4);
  const terminalWidth = Math.min(9, cell.width * 0.24);
  const ventStroke = zoneStroke(states.vents, 1.4);
  const terminal = (x: number): Mark => ({
    kind: 'shape',
    shape: {
      form: 'box',
      x: x - terminalWidth / 2,
      y: top - TERMINAL_HEIGHT,
      width: terminalWidth,
      height: TERMINAL_HEIGHT,
    },
    stroke: { ...stroke, width: 1.2 },
    fill: 'ground',
  });
  return [
    terminal(cell.leftTerminalX),
    terminal(cell.rightTerminalX),
    {
      kind: 'shape',
      shape: {
        form: 'box',
        x: cell.left,
        y: top,
        width: cell.width,
        height: bottom - top,
        radius: Math.min(3.5, cell.width / 5),
      },
      stroke,
      fill: 'face',
    },
    {
      kind: 'shape',
      shape: { form: 'ellipse', cx: cell.middleX, cy: ventY(layout), rx: Math.min(10, cell.width * 0.28), ry: 4 },
      stroke: ventStroke,
      fill: states.vents === 'next' ? zoneInk('next') : 'ground',
    },
  ];
}

/** Joins each cell's right terminal to its neighbour's left one, with a hump that gives as the cells swell. */
function busBars(cells: CellPlace[], layout: PackLayout, state: ZoneState): Mark[] {
  const y = terminalTopY(layout);
  const stroke = { ...zoneStroke(state, 2.6), cap: 'round' } as const;
  return cells.slice(1).map((right, place): Mark => {
    const from = (cells[place] ?? right).rightTerminalX;
    const to = right.leftTerminalX;
    const reach = Math.min(3, (to - from) / 4);
    const steps: PathStep[] = [
      ['M', from - reach, y],
      ['L', from, y],
      ['C', from + (to - from) * 0.15, y - 9, to - (to - from) * 0.15, y - 9, to, y],
      ['L', to + reach, y],
    ];
    return { kind: 'path', steps, stroke };
  });
}

function shelfMark({ cells, inside }: PackLayout): Mark {
  const y = cells.bottom + 3;
  return {
    kind: 'line',
    points: [
      [inside.left + 1, y + 4],
      [cells.left - 6, y + 4],
      [cells.left - 6, y],
      [cells.right + 6, y],
      [cells.right + 6, y + 4],
      [inside.right - 1, y + 4],
    ],
    stroke: { ink: 'muted', width: 1.2, join: 'round' },
  };
}
