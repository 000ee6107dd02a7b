import type { Drawing, Mark } from './display-list.ts';
import { BOTTOM_AXIS_HEIGHT, bottomAxis, leftAxis, TITLE_HEIGHT } from './plots/axis-marks.ts';
import { crossedCells } from './plots/crossed-cells.ts';
import { emptyFrame } from './plots/empty-frame.ts';
import { keyRows } from './plots/key-rows.ts';
import { type Box, type LabelRoom, labelRoom } from './plots/label-room.ts';
import { leftMargin } from './plots/left-margin.ts';
import { linearScale } from './plots/linear-scale.ts';
import { noteRows } from './plots/note-rows.ts';
import { packSign } from './plots/pack-sign.ts';
import { labelAt } from './plots/place-label.ts';
import { NAME } from './plots/plot-look.ts';
import { requireFinite } from './plots/require-finite.ts';
import { roomyTicks } from './plots/roomy-ticks.ts';
import type { Point } from './turn-point.ts';

export interface ScoreCostPack {
  label: string;
  /** Which sign: the same as in the other plots. */
  sign: number;
  /** Null, or no score: it is named below. */
  costPerKwh: number | null;
  score: { low: number; high: number } | null;
}

export interface ScoreCostInput {
  width: number;
  height: number;
  packs: readonly ScoreCostPack[];
  words: {
    alt: string;
    nothing: string;
    /** Titles of the axes. */
    score: string;
    cost: string;
    without: (labels: readonly string[]) => string;
    tick: (value: number, decimals: number) => string;
  };
}

const SCORE_TICKS = [0, 25, 50, 75, 100];
/** Room right of the dearest pack, of the length of the axis. */
const BEYOND_FRAC = 0.08;
const LEAST_PANEL = 150;
const CAP = 4;

/** Score, with the range of what is open as an upright bar, over what a delivered kilowatt-hour costs; both from 0. */
export function scoreCostPlot({ width, height: asked, packs, words }: ScoreCostInput): Drawing {
  requireFinite('scoreCostPlot: size', [width, asked]);
  const placed = packs.flatMap(({ costPerKwh, score, ...pack }) =>
    costPerKwh === null || score === null ? [] : [{ ...pack, costPerKwh, score }],
  );
  requireFinite(
    'scoreCostPlot: packs',
    placed.flatMap(({ costPerKwh, score }) => [costPerKwh, score.low, score.high]),
  );
  if (placed.length === 0) return emptyFrame({ width, height: asked, alt: words.alt, nothing: words.nothing });
  const left = packs.filter(({ costPerKwh, score }) => costPerKwh === null || score === null);
  const note = noteRows(left.length === 0 ? '' : words.without(left.map(({ label }) => label)), width);
  const key = keyRows(
    placed.map(({ label, sign }) => ({ text: label, sign: (x, y) => packSign(sign, [x, y]) })),
    width,
  );
  const below = key.height + note.height + 6;
  const height = Math.max(asked, TITLE_HEIGHT + LEAST_PANEL + BOTTOM_AXIS_HEIGHT + below);
  const panel: Box = {
    left: leftMargin(['100'], width),
    top: TITLE_HEIGHT + 6,
    right: width - 6,
    bottom: height - below - BOTTOM_AXIS_HEIGHT,
  };
  const range = { low: 0, high: Math.max(...placed.map(({ costPerKwh }) => costPerKwh), 1e-6) * (1 + BEYOND_FRAC) };
  const x = linearScale(range, panel.left, panel.right);
  const y = linearScale({ low: 0, high: 100 }, panel.bottom, panel.top);
  const ticks = roomyTicks({ range, length: panel.right - panel.left, tick: words.tick });
  const room = labelRoom({ left: 0, top: 0, right: width, bottom: height - below });
  return {
    width,
    height,
    alt: words.alt,
    marks: [
      ...leftAxis({
        panel,
        ticks: SCORE_TICKS.map((value) => ({ place: y(value), text: words.tick(value, 0) })),
        title: words.score,
        room,
      }),
      ...bottomAxis({
        panel,
        ticks: ticks.values.map((value) => ({ place: x(value), text: words.tick(value, ticks.decimals) })),
        title: words.cost,
        room,
        width,
      }),
      ...packMarks(
        placed.map(({ label, sign, costPerKwh, score }) => ({
          label,
          sign,
          at: [x(costPerKwh), y((score.low + score.high) / 2)],
          low: [x(costPerKwh), y(score.low)],
          high: [x(costPerKwh), y(score.high)],
        })),
        panel,
        room,
      ),
      ...key.marksAt(height - below + 4),
      ...note.marksAt(height - note.height),
    ],
  };
}

interface PlacedPack {
  label: string;
  sign: number;
  at: Point;
  low: Point;
  high: Point;
}

/** Signs keep their place; a name stands beside its sign where there is room, and in the key in any case. */
function packMarks(packs: readonly PlacedPack[], panel: Box, room: LabelRoom): Mark[] {
  for (const { at } of packs) {
    room.keepOff({ left: at[0] - 5, right: at[0] + 5, top: at[1] - 5, bottom: at[1] + 5 });
  }
  const crossed = crossedCells(
    packs.map(({ low, high }) => [low, high]),
    panel,
  );
  const names = packs.flatMap(({ label, at }) =>
    labelAt({ text: label, face: NAME, points: [at], panel, room, crossed }),
  );
  return [
    ...packs.flatMap(({ low, high }) => rangeBar(low, high)),
    ...names,
    ...packs.flatMap(({ sign, at }) => packSign(sign, at)),
  ];
}

function rangeBar(low: Point, high: Point): Mark[] {
  if (low[1] - high[1] < 1) return [];
  const ends = [low, high].map(
    ([x, y]): Mark => ({
      kind: 'line',
      points: [
        [x - CAP, y],
        [x + CAP, y],
      ],
      stroke: { ink: 'ink', width: 1.2 },
    }),
  );
  return [{ kind: 'line', points: [low, high], stroke: { ink: 'ink', width: 1.2 } }, ...ends];
}
