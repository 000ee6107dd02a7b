import { boxPath } from '../box-path.ts';
import type { CutawayZone } from '../cutaway.ts';
import type { Mark, Stroke } from '../display-list.ts';
import { zoneInk } from './zone-look.ts';
import { nameMarks, type TouchArea } from './zone-name.ts';

const COLUMNS = 2;
/** Room in a compartment for two lines and a gloved thumb. */
const ROW_HEIGHT = 60;
const GAP = 7;
const WALL = 9;
/** Ears stand out from the front, handles from its face. */
const EAR = 14;
const FRONT_HEIGHT = 18;
const HANDLE = { width: 40, height: 13 };
/** Widest it is drawn, in px, as the section is: beyond it a name stands lost in its compartment. */
const WIDEST = 520;
const OUTLINE: Stroke = { ink: 'ink', width: 2.4, join: 'round', cap: 'round' };

/**
 * A chassis seen from above, laid out from the number of its zones: two compartments to a row in the order in which the
 * checklist names them, the last one across where the number is odd; the front with ears and handles below.
 */
export function plan(zones: readonly CutawayZone[], widthPx: number) {
  const width = Math.min(widthPx, WIDEST);
  const left = (widthPx - width) / 2;
  const body = { left: left + EAR, width: width - 2 * EAR, top: 2 };
  const rows = Math.ceil(zones.length / COLUMNS);
  const inner = { left: body.left + WALL, width: body.width - 2 * WALL, top: body.top + WALL };
  const columnWidth = (inner.width - GAP) / COLUMNS;
  const touchAreas = zones.map(({ zoneId }, at): TouchArea => {
    const isAcross = at === zones.length - 1 && at % COLUMNS === 0;
    return {
      zoneId,
      x: inner.left + (at % COLUMNS) * (columnWidth + GAP),
      y: inner.top + Math.floor(at / COLUMNS) * (ROW_HEIGHT + GAP),
      width: isAcross ? inner.width : columnWidth,
      height: ROW_HEIGHT,
    };
  });
  const frontTop = inner.top + rows * (ROW_HEIGHT + GAP) - GAP + WALL;
  const marks: Mark[] = [
    {
      kind: 'path',
      steps: boxPath({ x: body.left, y: body.top, width: body.width, height: frontTop - body.top, radius: 4 }),
      stroke: OUTLINE,
    },
    ...frontMarks({ left, width, top: frontTop }),
    ...zones.flatMap((zone, at) => {
      const area = touchAreas[at];
      return area === undefined ? [] : compartmentMarks(zone, area);
    }),
  ];
  return { marks, touchAreas, height: frontTop + FRONT_HEIGHT + HANDLE.height + 2 };
}

function compartmentMarks(zone: CutawayZone, area: TouchArea): Mark[] {
  const isNext = zone.state === 'next';
  const { x, y, width, height } = area;
  return [
    {
      kind: 'shape',
      shape: { form: 'box', x, y, width, height, radius: 3 },
      stroke: { ink: isNext ? 'ink' : zone.state === 'done' ? 'line' : 'muted', width: isNext ? 2.6 : 1.2 },
      ...(isNext && { fill: 'face' as const }),
    },
    ...nameMarks(zone, { ...area, y: y + (height - NAME_BLOCK) / 2 }),
  ];
}

/** Height of title and progress as nameMarks sets them: its area begins 21 above the first baseline. */
const NAME_BLOCK = 52;

function frontMarks({ left, width, top }: { left: number; width: number; top: number }): Mark[] {
  const middle = top + FRONT_HEIGHT / 2;
  const bolts = [left + EAR / 2 + 1, left + width - EAR / 2 - 1];
  const handles = [left + width * 0.2, left + width * 0.8];
  return [
    {
      kind: 'path',
      steps: boxPath({ x: left + 1.5, y: top, width: width - 3, height: FRONT_HEIGHT, radius: 2.5 }),
      stroke: OUTLINE,
      fill: 'face',
    },
    ...bolts.map(
      (cx): Mark => ({
        kind: 'shape',
        shape: { form: 'ellipse', cx, cy: middle, rx: 3, ry: 3 },
        stroke: { ink: zoneInk('todo'), width: 1.4 },
      }),
    ),
    ...handles.map(
      (x): Mark => ({
        kind: 'path',
        steps: [
          ['M', x - HANDLE.width / 2, top + FRONT_HEIGHT],
          ['L', x - HANDLE.width / 2, top + FRONT_HEIGHT + HANDLE.height],
          ['L', x + HANDLE.width / 2, top + FRONT_HEIGHT + HANDLE.height],
          ['L', x + HANDLE.width / 2, top + FRONT_HEIGHT],
        ],
        stroke: OUTLINE,
      }),
    ),
  ];
}
