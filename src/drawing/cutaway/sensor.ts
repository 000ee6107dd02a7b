import type { Mark } from '../display-list.ts';
import type { CellPlace } from './cells.ts';
import type { PackLayout } from './pack-layout.ts';
import { type ZoneState, zoneInk, zoneStroke } from './zone-look.ts';

/** The bead sits on the face of a cell right of the middle, two thirds down. */
export function sensorPoint(cells: CellPlace[], { cells: row }: PackLayout): [x: number, y: number] {
  const cell = cells[Math.min(cells.length - 1, Math.floor(cells.length * 0.75))];
  return [cell?.middleX ?? (row.left + row.right) / 2, row.top + (row.bottom - row.top) * 0.6];
}

/** Sensor bead under a strip of tape, its lead running down to the BMS. */
export function sensorMarks(cells: CellPlace[], layout: PackLayout, state: ZoneState): Mark[] {
  const [x, y] = sensorPoint(cells, layout);
  const { bms } = layout;
  const socketX = bms.right - 22;
  const half = Math.min(13, (cells[0]?.width ?? 26) * 0.45);
  return [
    {
      kind: 'path',
      steps: [
        ['M', socketX, bms.top],
        ['C', socketX, bms.top - 30, x, bms.top - 22, x, y],
      ],
      stroke: zoneStroke(state, 1.4),
    },
    {
      kind: 'path',
      steps: [['M', x - half, y - 3], ['L', x + half, y - 6], ['L', x + half, y + 3], ['L', x - half, y + 6], ['Z']],
      stroke: { ink: zoneInk(state), width: 1 },
      fill: 'face',
    },
    {
      kind: 'shape',
      shape: { form: 'ellipse', cx: x, cy: y, rx: state === 'next' ? 4.6 : 3.6, ry: state === 'next' ? 4.6 : 3.6 },
      fill: zoneInk(state),
    },
  ];
}
