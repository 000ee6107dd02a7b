import type { Drawing, Mark, Stroke } from './display-list.ts';
import { BOTTOM_AXIS_HEIGHT, bottomAxis, leftAxis, TITLE_HEIGHT } from './plots/axis-marks.ts';
import { crossedCells } from './plots/crossed-cells.ts';
import { emptyFrame } from './plots/empty-frame.ts';
import { gateLine, gateMarks } from './plots/fuse-gate.ts';
import { type KeyEntry, keyRows } from './plots/key-rows.ts';
import { type Box, type LabelRoom, labelRoom } from './plots/label-room.ts';
import { leftMargin } from './plots/left-margin.ts';
import type { Scale } from './plots/linear-scale.ts';
import { logAxisTicks } from './plots/log-axis-ticks.ts';
import { logScale } from './plots/log-scale.ts';
import { logTicks } from './plots/log-ticks.ts';
import { labelAt } from './plots/place-label.ts';
import { FIGURE, NAME, SMALL } from './plots/plot-look.ts';
import { requireFinite } from './plots/require-finite.ts';
import { tripRanges } from './plots/trip-ranges.ts';
import { ARROW_REACH, tripAtOnceSign, tripSign } from './plots/trip-sign.ts';
import { LOWER_BOUND_FROM_S, placedWithstand, withstandMarks } from './plots/withstand-line.ts';
import { type TextFace, textWidth } from './text-width.ts';
import type { Point } from './turn-point.ts';

export interface DrawnTrip {
  currentA: number;
  /** Until it opened, or until the tester ended it. */
  timeS: number;
  opened: boolean;
  label: string;
}

/** How long a lead stands a current, in order of current. */
export interface WithstandCurve {
  label: string;
  points: readonly { currentA: number; timeS: number }[];
}

/** At this current a fuse opens between these times; null is no bound. */
export interface FuseGate {
  currentA: number;
  minTimeS: number | null;
  maxTimeS: number | null;
}

export interface TripPlotWords {
  alt: string;
  nothing: string;
  /** Titles of the axes with their units. */
  current: string;
  time: string;
  /** In the key below, for what occurs. */
  opened: string;
  held: string;
  /** Said of the dashed part of a withstand line: "at least". */
  lowerBound: string;
  /** At the line of the continuous claim. */
  continuous: string;
  tickA: (currentA: number) => string;
  tickS: (timeS: number) => string;
}

export interface TripPlotInput {
  width: number;
  height: number;
  trips: readonly DrawnTrip[];
  withstand: readonly WithstandCurve[];
  fuse: { label: string; gates: readonly FuseGate[] } | null;
  continuousA: number | null;
  words: TripPlotWords;
}

const RIGHT_MARGIN = 8;
const LOWEST_PANEL = 90;
const DASHED: Stroke = { ink: 'ink', width: 1.6, dash: [5, 3.5] };
const CLAIM: Stroke = { ink: 'ink', width: 1, dash: [9, 3, 2, 3] };
/** Of a trip at 0 s, above the foot of the panel: the arrow down needs the room. */
const AT_ONCE_ABOVE = ARROW_REACH + 1;

/**
 * Time against current, both by decades: what tripped and what held, what the leads stand, when the fuse opens, and the
 * continuous claim. Higher than `height` if that leaves the panel no room.
 */
export function tripPlot(input: TripPlotInput): Drawing {
  const { width, words } = input;
  requireFinite('tripPlot: size', [width, input.height]);
  const ranges = tripRanges(input);
  if (ranges === null) return emptyFrame({ width, height: input.height, alt: words.alt, nothing: words.nothing });
  const key = keyRows(keyOf(input), width);
  const below = 8 + key.height;
  const height = Math.max(input.height, TITLE_HEIGHT + LOWEST_PANEL + BOTTOM_AXIS_HEIGHT + below);
  const timeFigures = logTicks(ranges.timeS).map((tick) => words.tickS(tick.value));
  const panel: Box = {
    left: leftMargin(timeFigures, width),
    right: width - RIGHT_MARGIN,
    top: TITLE_HEIGHT,
    bottom: height - below - BOTTOM_AXIS_HEIGHT,
  };
  const x = logScale(ranges.currentA, panel.left, panel.right);
  const y = logScale(ranges.timeS, panel.bottom, panel.top);
  const room = labelRoom({ left: 0, top: 0, right: width, bottom: height - below });
  const upright = { range: ranges.timeS, scale: y, say: words.tickS, lengthOf: () => FIGURE.size + 3 };
  const level = {
    range: ranges.currentA,
    scale: x,
    say: words.tickA,
    lengthOf: (text: string) => textWidth(text, FIGURE) + 6,
  };
  return {
    width,
    height,
    alt: words.alt,
    marks: [
      ...leftAxis({ panel, room, title: words.time, ticks: logAxisTicks(upright) }),
      ...bottomAxis({ panel, room, width, title: words.current, ticks: logAxisTicks(level) }),
      ...contentMarks(input, { panel, x, y, room }),
      ...key.marksAt(height - key.height),
    ],
  };
}

function keyOf({ trips, withstand, words }: TripPlotInput): KeyEntry[] {
  const entries: KeyEntry[] = [];
  if (trips.some((trip) => trip.opened)) entries.push({ text: words.opened, sign: (x, y) => tripSign(true, x, y) });
  if (trips.some((trip) => !trip.opened)) entries.push({ text: words.held, sign: (x, y) => tripSign(false, x, y + 4) });
  if (withstand.some((curve) => curve.points.some((point) => point.timeS > LOWER_BOUND_FROM_S))) {
    const sign = (x: number, y: number): Mark[] => [
      {
        kind: 'line',
        points: [
          [x - 7, y],
          [x + 7, y],
        ],
        stroke: DASHED,
      },
    ];
    entries.push({ text: words.lowerBound, sign });
  }
  return entries;
}

interface Frame {
  panel: Box;
  x: Scale;
  y: Scale;
  room: LabelRoom;
}

/** Lines first, marks over them, words last and where they cover least. */
function contentMarks(input: TripPlotInput, { panel, x, y, room }: Frame): Mark[] {
  const lines = input.withstand.map((curve) => placedWithstand(curve, x, y));
  const gates = input.fuse?.gates ?? [];
  const gateLines = gates.flatMap((gate) => [gateLine(gate, { x, y }, panel) ?? []]).filter((line) => line.length > 0);
  const trips = input.trips.map((trip) => ({
    ...trip,
    point: [x(trip.currentA), trip.timeS === 0 ? panel.bottom - AT_ONCE_ABOVE : y(trip.timeS)] as Point,
  }));
  const claim: Point[] =
    input.continuousA === null
      ? []
      : [
          [x(input.continuousA), panel.top],
          [x(input.continuousA), panel.bottom],
        ];
  const crossed = crossedCells(
    [...lines.map((line) => line.points), ...gateLines, claim, ...trips.map(tripReach)],
    panel,
  );
  const label = (text: string, face: TextFace, points: readonly Point[]): Mark[] =>
    labelAt({ text, face, points, panel, room, crossed });
  return [
    ...(claim.length === 0 ? [] : [{ kind: 'line', points: claim, stroke: CLAIM } as const]),
    ...lines.flatMap(withstandMarks),
    ...gates.flatMap((gate) => gateMarks(gate, { x, y }, panel)),
    ...trips.flatMap(({ opened, timeS, point }) => (timeS === 0 ? tripAtOnceSign : tripSign)(opened, ...point)),
    ...trips.flatMap((trip) => label(trip.label, NAME, [trip.point])),
    ...label(
      input.words.continuous,
      FIGURE,
      claim.slice(0, 1).map(([at, top]): Point => [at, top + 8]),
    ),
    ...label(
      input.fuse?.label ?? '',
      SMALL,
      gateLines.flatMap((line) => line.slice(0, 1)),
    ),
    ...lines.flatMap((line, place) => label(input.withstand[place]?.label ?? '', SMALL, evenly(line.points))),
  ];
}

/** The mark and its arrow, so that no label is put over them. */
function tripReach({ point: [x, y], opened }: { point: Point; opened: boolean }): Point[] {
  return [
    [x - 4, y - 4],
    [x + 4, y - 4],
    [x + 4, y + 4],
    [x - 4, y + 4],
    [x - 4, y - 4],
    [x, opened ? y : y - ARROW_REACH],
  ];
}

/** A few points along a line, its end first: at any of them it can be named. */
function evenly(points: readonly Point[]): Point[] {
  const step = Math.max(1, Math.floor(points.length / NAMED_AT));
  return points.filter((_, place) => (points.length - 1 - place) % step === 0).reverse();
}
const NAMED_AT = 6;
