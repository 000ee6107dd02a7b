import type { CutawayZone } from '../cutaway.ts';
import type { Mark } from '../display-list.ts';
import { type CellPlace, ventY } from './cells.ts';
import { wiringPoint } from './leads.ts';
import { NAME_HEIGHT, type PackLayout, WALL } from './pack-layout.ts';
import { sensorPoint } from './sensor.ts';
import { frameMarks, nameMarks, type TouchArea } from './zone-name.ts';

const COLUMNS = 3;
const ROW_GAP = 6;

/** Row and column of the zones the drawing has a part for, in the order in which they are named. */
const PLACES: Readonly<Record<string, { row: 'above' | 'below'; column: number }>> = {
  vents: { row: 'above', column: 0 },
  cells: { row: 'above', column: 1 },
  enclosure: { row: 'above', column: 2 },
  wiring: { row: 'below', column: 0 },
  bms: { row: 'below', column: 1 },
  sensors: { row: 'below', column: 2 },
};

/** Whether the section of a pack has a part for a zone. Any other is named in the rows below it, or has a plan of its own. */
export function hasPart(zoneId: string): boolean {
  return Object.hasOwn(PLACES, zoneId);
}

interface LabelInput {
  zones: CutawayZone[];
  layout: PackLayout;
  cells: CellPlace[];
}

/** Names and progress at the edge, each with a leader line to its part and a touch area around the name. */
export function labelMarks(input: LabelInput): { marks: Mark[]; touchAreas: TouchArea[]; height: number } {
  const { layout } = input;
  const columnWidth = layout.width / COLUMNS;
  const extra = input.zones.filter((zone) => !hasPart(zone.zoneId));
  const areaOf = (zone: CutawayZone): TouchArea => {
    const place = PLACES[zone.zoneId];
    const rank = extra.indexOf(zone);
    const column = place?.column ?? rank % COLUMNS;
    const y =
      place?.row === 'above'
        ? layout.namesAbove - NAME_HEIGHT
        : layout.namesBelow + (place === undefined ? (1 + Math.floor(rank / COLUMNS)) * (NAME_HEIGHT + ROW_GAP) : 0);
    return { zoneId: zone.zoneId, x: layout.left + column * columnWidth, y, width: columnWidth, height: NAME_HEIGHT };
  };
  const touchAreas = input.zones.map(areaOf);
  const marks = input.zones.flatMap((zone) => {
    const area = areaOf(zone);
    return [...leaderMarks(zone, area, input), ...frameMarks(zone, area), ...nameMarks(zone, area)];
  });
  const lowest = Math.max(layout.namesBelow, ...touchAreas.map((area) => area.y + area.height));
  return { marks, touchAreas, height: lowest + 2 };
}

/** A thin line from the name to its part, kept readable over what it crosses by an edge in the ground's colour. */
function leaderMarks(zone: CutawayZone, area: TouchArea, input: LabelInput): Mark[] {
  const target = targetOf(zone.zoneId, input);
  if (target === null) return [];
  const above = PLACES[zone.zoneId]?.row === 'above';
  const strong = zone.state === 'next';
  const inset = strong ? 2 : 6;
  const start: [number, number] = [
    target.startX ?? area.x + area.width / 2,
    above ? area.y + area.height - inset : area.y + inset - 2,
  ];
  const points: [number, number][] = [start, target.point];
  const ink = strong ? 'ink' : 'muted';
  const width = strong ? 2 : 1;
  const radius = strong ? 4 : 2.8;
  const [cx, cy] = target.point;
  return [
    { kind: 'line', points, stroke: { ink: 'ground', width: width + 3 } },
    { kind: 'line', points, stroke: { ink, width } },
    {
      kind: 'shape',
      shape: { form: 'ellipse', cx, cy, rx: radius, ry: radius },
      fill: ink,
      stroke: { ink: 'ground', width: 1.5 },
    },
  ];
}

function targetOf(zoneId: string, { layout, cells }: LabelInput): { point: [number, number]; startX?: number } | null {
  const { inside, tub, lid, bms } = layout;
  const columnWidth = layout.width / COLUMNS;
  switch (zoneId) {
    case 'vents': {
      const x = cells[Math.floor(cells.length * 0.3)]?.middleX ?? inside.left;
      return { point: [x, ventY(layout)], startX: layout.left + columnWidth * 0.66 };
    }
    case 'cells': {
      const cell = cells[Math.floor(cells.length / 2)];
      const x = cell === undefined ? inside.left : cell.left + cell.width * (cells.length === 1 ? 0.7 : 0.25);
      return { point: [x, layout.cells.top + (layout.cells.bottom - layout.cells.top) * 0.42] };
    }
    case 'enclosure':
      return { point: [tub.right - WALL / 2, lid.bottom + 16], startX: layout.left + columnWidth * 2.78 };
    case 'wiring':
      return { point: wiringPoint(layout) };
    case 'bms':
      return { point: [(bms.left + bms.right) / 2, bms.bottom - 3] };
    case 'sensors':
      return { point: sensorPoint(cells, layout) };
    default:
      return null;
  }
}
