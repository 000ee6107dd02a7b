import type { Mark, TextMark } from '../display-list.ts';
import { shortened } from '../text-shortened.ts';
import { textWidth } from '../text-width.ts';
import type { Point } from '../turn-point.ts';
import type { CrossedCells } from './crossed-cells.ts';
import { type Box, type LabelRoom, textBox } from './label-room.ts';
import type { Scale } from './linear-scale.ts';
import { FIGURE } from './plot-look.ts';

/** A value that matters by itself, such as the maker's cut-off voltage. */
export interface PanelLevel {
  value: number;
  text: string;
}

export interface LevelInput {
  level: PanelLevel;
  panel: Box;
  y: Scale;
  room: LabelRoom;
  crossed: CrossedCells;
}

const STEP = 6;
const CLEARANCE = 3.5;

export function levelPoints({ value }: PanelLevel, panel: Box, y: Scale): Point[] {
  return [
    [panel.left, y(value)],
    [panel.right, y(value)],
  ];
}

/** A dashed line across the panel with its words on it or under it, where they cover least. */
export function levelMarks({ level, panel, y, room, crossed }: LevelInput): Mark[] {
  const marks: Mark[] = [
    { kind: 'line', points: levelPoints(level, panel, y), stroke: { ink: 'ink', width: 1, dash: [5, 4] } },
  ];
  const text = shortened(level.text, FIGURE, panel.right - panel.left - 8);
  const width = textWidth(text, FIGURE);
  const above = y(level.value) - CLEARANCE;
  const below = y(level.value) + CLEARANCE + FIGURE.size * 0.72;
  let best: { mark: TextMark; covered: number } | null = null;
  for (const baseline of [above, below]) {
    for (let x = panel.left + 4; x + width <= panel.right - 2; x += STEP) {
      const mark: TextMark = {
        kind: 'text',
        x,
        y: baseline,
        text,
        ...FIGURE,
        anchor: 'start',
        ink: 'ink',
        halo: { ink: 'ground', width: 2.5 },
      };
      const box = textBox(mark);
      if (box.top < panel.top - 4 || box.bottom > panel.bottom || !room.fits(box)) continue;
      const covered = crossed(box);
      if (best === null || covered < best.covered) best = { mark, covered };
    }
  }
  if (best === null) return marks;
  room.take(best.mark);
  return [...marks, best.mark];
}
