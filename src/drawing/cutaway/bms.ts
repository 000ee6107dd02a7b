import type { Mark } from '../display-list.ts';
import type { PackLayout } from './pack-layout.ts';
import { type ZoneState, zoneInk, zoneStroke } from './zone-look.ts';

/** The board under the cells: switches in a row, one controller, the socket of the sense leads at its right end. */
export function bmsMarks({ bms }: PackLayout, state: ZoneState): Mark[] {
  const ink = zoneInk(state);
  const height = bms.bottom - bms.top;
  const width = bms.right - bms.left;
  const middleY = (bms.top + bms.bottom) / 2;
  const switches = Array.from(
    { length: 5 },
    (_, place): Mark => ({
      kind: 'shape',
      shape: { form: 'box', x: bms.left + 10 + place * 9, y: middleY - 3.5, width: 6, height: 7, radius: 0.5 },
      fill: ink,
    }),
  );
  return [
    {
      kind: 'shape',
      shape: { form: 'box', x: bms.left, y: bms.top, width, height, radius: 2 },
      stroke: zoneStroke(state, 1.8),
      fill: 'ground',
    },
    ...switches,
    {
      kind: 'shape',
      shape: { form: 'box', x: bms.left + width * 0.52, y: middleY - 4.5, width: 17, height: 9, radius: 1 },
      stroke: zoneStroke(state, 1.2),
    },
    ...[0, 1, 2].map(
      (place): Mark => ({
        kind: 'line',
        points: [
          [bms.left + width * 0.52 + 23, middleY - 3.5 + place * 3.5],
          [bms.left + width * 0.52 + 31, middleY - 3.5 + place * 3.5],
        ],
        stroke: { ink, width: 1.2 },
      }),
    ),
    {
      kind: 'shape',
      shape: { form: 'box', x: bms.right - 9, y: bms.top + 2.5, width: 9, height: height - 5 },
      stroke: zoneStroke(state, 1.2),
      fill: 'face',
    },
  ];
}
