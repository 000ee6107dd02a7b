import type { Mark, Stroke } from '../display-list.ts';
import type { Point } from '../turn-point.ts';
import { BOTTOM_AXIS_HEIGHT, bottomAxis, leftAxis, TITLE_HEIGHT } from './axis-marks.ts';
import { crossedCells } from './crossed-cells.ts';
import type { Box, LabelRoom } from './label-room.ts';
import { leftMargin } from './left-margin.ts';
import { levelMarks, levelPoints, type PanelLevel } from './level-line.ts';
import { linearScale, type Scale } from './linear-scale.ts';
import type { NiceTicks } from './nice-ticks.ts';
import { labelAt } from './place-label.ts';
import { NAME } from './plot-look.ts';
import { roomyTicks } from './roomy-ticks.ts';
import type { ValueRange } from './value-range.ts';

export interface PanelCurve {
  xs: readonly number[];
  ys: readonly number[];
  look: Stroke;
  /** Stands at the last point; `isSteep` where the line comes to it from above or below rather than from a side. */
  sign: ((x: number, y: number, isSteep: boolean) => Mark[]) | null;
  /** Stands near the last point; null if another panel names the curve. */
  label: string | null;
}

export interface PanelPlan {
  title: string;
  range: ValueRange & NiceTicks;
  curves: readonly PanelCurve[];
  levels: readonly PanelLevel[];
  /** Its part of the height, against the others'. */
  weight: number;
  /** Kept free between the panel and its title. */
  headroom?: number;
}

export interface StackedPanelsInput {
  width: number;
  top: number;
  bottom: number;
  plans: readonly PanelPlan[];
  xRange: ValueRange;
  xTitle: string;
  tick: (value: number, decimals: number) => string;
  room: LabelRoom;
  /** What lies under everything else: bands across all panels. */
  behind?: (frame: { x: Scale; panels: readonly Box[] }) => Mark[];
}

/** Room right of the panels, for half of the last figure. */
const RIGHT_MARGIN = 8;
/** A panel lower than this says nothing. */
const LOWEST_PANEL = 36;

/** Height below which so many panels have no room; callers make the drawing higher instead. */
export function leastPanelsHeight(count: number): number {
  return count * (TITLE_HEIGHT + LOWEST_PANEL) + (count - 1) * TITLE_GAP + BOTTOM_AXIS_HEIGHT;
}
const TITLE_GAP = 11;

/** Panels one above the other that share the axis below the last. */
export function stackedPanels(input: StackedPanelsInput): Mark[] {
  const { plans, width, tick, room, xRange } = input;
  const left = leftMargin(
    plans.flatMap(({ range }) => range.values.map((value) => tick(value, range.decimals))),
    width,
  );
  const panels = panelBoxes(input, { left, right: width - RIGHT_MARGIN });
  const x = linearScale(xRange, left, width - RIGHT_MARGIN);
  const xTicks = roomyTicks({ range: xRange, length: width - RIGHT_MARGIN - left, tick });
  const bottomTicks = xTicks.values.map((value) => ({ place: x(value), text: tick(value, xTicks.decimals) }));
  const behind: Mark[] = [];
  const above: Mark[] = [];
  for (const [place, plan] of plans.entries()) {
    const panel = panels[place];
    if (panel === undefined) continue;
    const y = linearScale(plan.range, panel.bottom, panel.top);
    const title = place === plans.length - 1 ? input.xTitle : null;
    const ticks = plan.range.values.map((value) => ({ place: y(value), text: tick(value, plan.range.decimals) }));
    behind.push(...leftAxis({ panel, ticks, title: plan.title, room, headroom: plan.headroom ?? 0 }));
    behind.push(...bottomAxis({ panel, ticks: bottomTicks, title, room, width }));
    above.push(...curveMarks({ plan, panel, x, y, room }));
  }
  return [...(input.behind?.({ x, panels }) ?? []), ...behind, ...above];
}

function panelBoxes({ plans, top, bottom }: StackedPanelsInput, across: { left: number; right: number }): Box[] {
  const headrooms = plans.reduce((sum, plan) => sum + (plan.headroom ?? 0), 0);
  const titles = plans.length * TITLE_HEIGHT + (plans.length - 1) * TITLE_GAP + headrooms;
  const free = bottom - top - titles - BOTTOM_AXIS_HEIGHT - plans.length * LOWEST_PANEL;
  const weights = plans.reduce((sum, plan) => sum + plan.weight, 0);
  let down = top;
  return plans.map(({ weight, headroom }) => {
    const panelTop = down + TITLE_HEIGHT + (headroom ?? 0);
    const panelBottom = panelTop + LOWEST_PANEL + (free * weight) / weights;
    down = panelBottom + TITLE_GAP;
    return { ...across, top: panelTop, bottom: panelBottom };
  });
}

interface CurvesInput {
  plan: PanelPlan;
  panel: Box;
  x: Scale;
  y: Scale;
  room: LabelRoom;
}

function curveMarks({ plan, panel, x, y, room }: CurvesInput): Mark[] {
  const lines = plan.curves.map(({ xs, ys }) =>
    xs.map((value, place): Point => [x(value), y(ys[place] ?? Number.NaN)]),
  );
  const ends = lines.flatMap((points) => points.slice(-1));
  const crossed = crossedCells(
    [...lines, ...plan.levels.map((level) => levelPoints(level, panel, y)), ...ends.map(aroundEnd)],
    panel,
  );
  const marks = plan.levels.flatMap((level) => levelMarks({ level, panel, y, room, crossed }));
  for (const [place, points] of lines.entries()) {
    if (points.length > 1)
      marks.push({ kind: 'line', points, stroke: plan.curves[place]?.look ?? { ink: 'ink', width: 1 } });
  }
  for (const [place, { sign, label }] of plan.curves.entries()) {
    const end = lines[place]?.at(-1);
    if (end === undefined) continue;
    marks.push(...(sign?.(...end, isSteepAtEnd(lines[place] ?? [])) ?? []));
    if (label !== null) marks.push(...labelAt({ text: label, face: NAME, points: [end], panel, room, crossed }));
  }
  return marks;
}

function isSteepAtEnd(points: readonly Point[]): boolean {
  const [before, last] = points.slice(-2);
  return before !== undefined && last !== undefined && Math.abs(last[1] - before[1]) > Math.abs(last[0] - before[0]);
}

/** A small ring of points, so that no label is put over the sign at a curve's end. */
function aroundEnd([x, y]: Point): Point[] {
  return [
    [x - 4, y - 4],
    [x + 4, y - 4],
    [x + 4, y + 4],
    [x - 4, y + 4],
    [x - 4, y - 4],
  ];
}
