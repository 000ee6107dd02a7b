import type { Mark, PathStep, Stroke } from '../display-list.ts';
import { type CellPlace, terminalTopY } from './cells.ts';
import type { PackLayout } from './pack-layout.ts';
import { type ZoneState, zoneInk, zoneStroke } from './zone-look.ts';

/** Middles of the two leads in the left channel, from the wall inwards. */
const OUTER_LEAD = 6.5;
const INNER_LEAD = 14.5;

/** The point of the outer lead at which the name "wiring" points. */
export function wiringPoint({ inside, cells }: PackLayout): [x: number, y: number] {
  return [inside.left + OUTER_LEAD, cells.bottom - 26];
}

/** Minus goes from its post through the BMS to the first cell; plus goes straight from the last one to its post. */
export function mainLeadMarks(cells: CellPlace[], layout: PackLayout, state: ZoneState): Mark[] {
  const first = cells[0];
  const last = cells.at(-1);
  if (first === undefined || last === undefined) return [];
  const width = state === 'next' ? 5.4 : 4;
  const runs = [postToBms(layout), bmsToFirstCell(first, layout), lastCellToPost(last, layout)];
  return runs.flatMap((steps): Mark[] => [
    { kind: 'path', steps, stroke: { ink: 'ground', width: width + 3, cap: 'butt', join: 'round' } },
    { kind: 'path', steps, stroke: { ink: zoneInk(state), width, cap: 'round', join: 'round' } },
  ]);
}

function postToBms({ posts, inside, bms }: PackLayout): PathStep[] {
  const x = inside.left + OUTER_LEAD;
  const y = bms.bottom - 4.5;
  return [
    ['M', posts.minusX, inside.top],
    ['L', posts.minusX, inside.top + 4],
    ['C', posts.minusX, inside.top + 16, x, inside.top + 12, x, inside.top + 28],
    ['L', x, y - 10],
    ['C', x, y - 3, x + 3, y, x + 10, y],
    ['L', bms.left, y],
  ];
}

function bmsToFirstCell(first: CellPlace, layout: PackLayout): PathStep[] {
  const { inside, bms } = layout;
  const x = inside.left + INNER_LEAD;
  const y = bms.top + 4.5;
  const top = terminalTopY(layout);
  return [
    ['M', bms.left, y],
    ['L', x + 6, y],
    ['C', x + 2, y, x, y - 2, x, y - 6],
    ['L', x, top + 8],
    ['C', x, top - 4, first.leftTerminalX - 8, top, first.leftTerminalX, top],
  ];
}

function lastCellToPost(last: CellPlace, layout: PackLayout): PathStep[] {
  const { posts, inside } = layout;
  const top = terminalTopY(layout);
  return [
    ['M', posts.plusX, inside.top],
    ['L', posts.plusX, inside.top + 8],
    ['C', posts.plusX, top - 6, last.rightTerminalX, top - 16, last.rightTerminalX, top],
  ];
}

/** Thin leads from every joint of the string into one loom, down the right channel to the BMS. */
export function senseLeadMarks(cells: CellPlace[], layout: PackLayout, state: ZoneState): Mark[] {
  const { inside, bms, loomY } = layout;
  const channelX = inside.right - 9;
  const y = bms.top + 6;
  const stroke: Stroke = { ...zoneStroke(state, 1.3), dash: [4, 3], cap: 'butt' };
  const taps = tapPoints(cells, layout);
  const leftmost = taps[0] ?? [channelX, loomY];
  const loom: PathStep[] = [
    ['M', leftmost[0], leftmost[1]],
    ['L', leftmost[0], loomY + 5],
    ['C', leftmost[0], loomY + 2, leftmost[0] + 2, loomY, leftmost[0] + 5, loomY],
    ['L', channelX - 8, loomY],
    ['C', channelX - 3, loomY, channelX, loomY + 3, channelX, loomY + 8],
    ['L', channelX, y - 8],
    ['C', channelX, y - 3, channelX - 3, y, channelX - 8, y],
    ['L', bms.right, y],
  ];
  return [
    { kind: 'path', steps: loom, stroke },
    ...taps.slice(1).map((tap): Mark => ({ kind: 'line', points: [[tap[0], loomY], tap], stroke })),
  ];
}

/** One tap at each end of the string and one on each bus bar between. */
function tapPoints(cells: CellPlace[], layout: PackLayout): [x: number, y: number][] {
  const y = terminalTopY(layout);
  const last = cells.at(-1);
  return cells.flatMap((cell, place): [number, number][] => {
    const before = cells[place - 1];
    const left: [number, number] =
      before === undefined ? [cell.leftTerminalX, y - 3] : [(before.rightTerminalX + cell.leftTerminalX) / 2, y - 8];
    return cell === last ? [left, [cell.rightTerminalX, y - 3]] : [left];
  });
}
