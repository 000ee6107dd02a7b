import { bmsMarks } from './cutaway/bms.ts';
import { cellMarks, cellPlaces, MOST_CELLS_DRAWN } from './cutaway/cells.ts';
import { enclosureMarks, postMarks } from './cutaway/enclosure.ts';
import { hasPart, labelMarks } from './cutaway/labels.ts';
import { mainLeadMarks, senseLeadMarks } from './cutaway/leads.ts';
import { packLayout } from './cutaway/pack-layout.ts';
import { plan } from './cutaway/plan.ts';
import { sensorMarks } from './cutaway/sensor.ts';
import type { ZoneState } from './cutaway/zone-look.ts';
import type { TouchArea } from './cutaway/zone-name.ts';
import type { Drawing } from './display-list.ts';

export interface CutawayZone {
  zoneId: string;
  title: string;
  /** Already in words: "3 of 9", "done". */
  progressText: string;
  state: ZoneState;
}

export interface CutawayInput {
  /** From the nameplate; null while it does not say. */
  cellsInSeries: number | null;
  zones: CutawayZone[];
  widthPx: number;
  /** What the drawing says in words, owning up when fewer cells are drawn than there are, or none; without it, none. */
  alt?: (cells: { drawn: number; inSeries: number | null }) => string;
}

export interface Cutaway {
  drawing: Drawing;
  /** One per zone, at least 48 × 48 (given 144 px of width), none over another, in the order of `zones`. */
  touchAreas: TouchArea[];
  cellsDrawn: number;
}

/** Cells drawn while the nameplate is blank: four, as in a 12.8 V pack, the commonest drop-in. */
const CELLS_WHEN_UNKNOWN = 4;

/**
 * Front section of the pack with the zones it has parts for named at the edge, the others in rows below it. A checklist
 * that mostly looks at other things has a plan instead, a compartment to each zone. The zone to do next is drawn strong,
 * finished ones calm.
 */
export function cutaway({ cellsInSeries, zones, widthPx, alt }: CutawayInput): Cutaway {
  // Our choice: below half, names without a part would outnumber those with one, and the section would mislead.
  const withPart = zones.filter(({ zoneId }) => hasPart(zoneId)).length;
  if (2 * withPart < zones.length) {
    const { marks, touchAreas, height } = plan(zones, widthPx);
    const said = alt?.({ drawn: 0, inSeries: cellsInSeries }) ?? '';
    return { cellsDrawn: 0, touchAreas, drawing: { width: widthPx, height, alt: said, marks } };
  }
  const cellsDrawn = Math.min(Math.max(1, cellsInSeries ?? CELLS_WHEN_UNKNOWN), MOST_CELLS_DRAWN);
  const layout = packLayout(widthPx);
  const cells = cellPlaces(cellsDrawn, layout);
  const stateOf = (zoneId: string): ZoneState => zones.find((zone) => zone.zoneId === zoneId)?.state ?? 'todo';
  const labels = labelMarks({ zones, layout, cells });
  return {
    cellsDrawn,
    touchAreas: labels.touchAreas,
    drawing: {
      width: widthPx,
      height: labels.height,
      alt: alt?.({ drawn: cellsDrawn, inSeries: cellsInSeries }) ?? '',
      marks: [
        ...enclosureMarks(layout, stateOf('enclosure')),
        ...cellMarks(cells, layout, { cells: stateOf('cells'), vents: stateOf('vents'), wiring: stateOf('wiring') }),
        ...senseLeadMarks(cells, layout, stateOf('wiring')),
        ...bmsMarks(layout, stateOf('bms')),
        ...sensorMarks(cells, layout, stateOf('sensors')),
        ...mainLeadMarks(cells, layout, stateOf('wiring')),
        ...postMarks(layout, stateOf('enclosure')),
        ...labels.marks,
      ],
    },
  };
}
