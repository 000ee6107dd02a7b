import type { LineMark, Mark, TextMark } from '../display-list.ts';
import { shortened } from '../text-shortened.ts';
import { type Box, clampedAcross, type LabelRoom } from './label-room.ts';
import { AXIS_STROKE, FIGURE, GRID_STROKE, SMALL } from './plot-look.ts';

export interface AxisTick {
  place: number;
  /** Null for a tick without a figure. */
  text: string | null;
  /** Drawn shorter. */
  minor?: boolean;
}

const TICK = 4;
const MINOR_TICK = 2.5;
/** Between a tick's figure and the axis; below it a little more, so that the corner has room for both figures. */
export const FIGURE_GAP = 7;
const GAP_BELOW = 9;
/** From the bottom axis to the lower end of its figures. */
const FIGURES_HEIGHT = GAP_BELOW + FIGURE.size * 0.97;
export const TITLE_HEIGHT = 20;

/** Upright axis at the panel's left with a faint line across at each figure, and its title above it. */
export function leftAxis({ panel, ticks, title, room, headroom }: LeftAxisInput): Mark[] {
  const marks: Mark[] = [];
  for (const { place, text, minor } of ticks) {
    if (text !== null && place < panel.bottom - 0.5) {
      marks.push(line([panel.left, place], [panel.right, place], GRID_STROKE));
    }
    marks.push(line([panel.left - (minor === true ? MINOR_TICK : TICK), place], [panel.left, place], AXIS_STROKE));
    if (text === null) continue;
    const mark = room.take({
      kind: 'text',
      x: panel.left - FIGURE_GAP,
      y: place + FIGURE.size * 0.35,
      text: shortened(text, FIGURE, panel.left - FIGURE_GAP),
      ...FIGURE,
      anchor: 'end',
      ink: 'muted',
    });
    if (mark !== null) marks.push(mark);
  }
  marks.push(line([panel.left, panel.top], [panel.left, panel.bottom], AXIS_STROKE));
  const words = room.take({
    kind: 'text',
    x: 0,
    y: panel.top - 9 - (headroom ?? 0),
    text: shortened(title, SMALL, panel.right),
    ...SMALL,
    anchor: 'start',
    ink: 'muted',
  });
  return words === null ? marks : [...marks, words];
}

export interface LeftAxisInput {
  panel: Box;
  ticks: readonly AxisTick[];
  title: string;
  room: LabelRoom;
  /** Kept free between the panel and its title. */
  headroom?: number;
}

/** Level axis below the panel. Without a title it has ticks only: the panel below it carries the figures. */
export function bottomAxis({ panel, ticks, title, room, width }: BottomAxisInput): Mark[] {
  const marks: Mark[] = [line([panel.left, panel.bottom], [panel.right, panel.bottom], AXIS_STROKE)];
  for (const { place, text, minor } of ticks) {
    const length = minor === true ? MINOR_TICK : TICK;
    marks.push(line([place, panel.bottom], [place, panel.bottom + length], AXIS_STROKE));
    if (text === null || title === null) continue;
    const figure: TextMark = {
      kind: 'text',
      x: place,
      y: panel.bottom + GAP_BELOW + FIGURE.size * 0.75,
      text: shortened(text, FIGURE, width),
      ...FIGURE,
      anchor: 'middle',
      ink: 'muted',
    };
    const mark = room.take(clampedAcross(figure, 0, width));
    if (mark !== null) marks.push(mark);
  }
  if (title === null) return marks;
  const words = room.take({
    kind: 'text',
    x: panel.right,
    y: panel.bottom + FIGURES_HEIGHT + SMALL.size,
    text: shortened(title, SMALL, panel.right),
    ...SMALL,
    anchor: 'end',
    ink: 'muted',
  });
  return words === null ? marks : [...marks, words];
}

export interface BottomAxisInput {
  panel: Box;
  ticks: readonly AxisTick[];
  title: string | null;
  room: LabelRoom;
  /** Of the whole drawing: a figure may reach beyond the panel, not beyond this. */
  width: number;
}

/** From the bottom axis to the lower end of its title. */
export const BOTTOM_AXIS_HEIGHT = FIGURES_HEIGHT + SMALL.size + 6;

function line(from: [number, number], to: [number, number], stroke: LineMark['stroke']): Mark {
  return { kind: 'line', points: [from, to], stroke };
}
