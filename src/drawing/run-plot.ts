import type { RunEndChoice } from '../schema/live-tests/run.ts';
import type { Drawing } from './display-list.ts';
import { curveLook } from './plots/curve-looks.ts';
import { emptyFrame } from './plots/empty-frame.ts';
import { endKeySign, endSign } from './plots/end-signs.ts';
import { keyRows } from './plots/key-rows.ts';
import { labelRoom } from './plots/label-room.ts';
import { framedTicks } from './plots/nice-ticks.ts';
import { noteRows } from './plots/note-rows.ts';
import { requireFinite } from './plots/require-finite.ts';
import { type PlacedRun, type PlacedRuns, placedRuns } from './plots/run-curves.ts';
import { leastPanelsHeight, type PanelPlan, stackedPanels } from './plots/stacked-panels.ts';
import { atLeastWide, valueRange } from './plots/value-range.ts';

/** One run, thinned by the caller. Lists of one length; null where it was not logged. */
export interface RunCurve {
  label: string;
  timeS: readonly number[];
  voltageV: readonly number[] | null;
  currentA: readonly number[] | null;
  chargeAh: readonly number[] | null;
  end: RunEndChoice;
  /** The maker's, if stated. */
  cutOffVoltageV: number | null;
}

export interface RunPlotWords {
  alt: string;
  /** Written in the empty frame. */
  nothing: string;
  /** Titles of the axes with their units: "Voltage, V". */
  voltage: string;
  current: string;
  charge: string;
  seconds: string;
  minutes: string;
  hours: string;
  /** In the key below, for the ways of ending that occur. */
  ends: Readonly<Record<RunEndChoice, string>>;
  cutOff: (voltageV: number) => string;
  /** Said of runs that lack what the axes ask for; empty says nothing. */
  notDrawn: (labels: readonly string[]) => string;
  /** A figure at a tick, with so many decimals. */
  tick: (value: number, decimals: number) => string;
}

export interface RunPlotInput {
  width: number;
  height: number;
  by: 'time' | 'charge';
  runs: readonly RunCurve[];
  voltage: true;
  /** A second panel below the first. */
  current: boolean;
  words: RunPlotWords;
}

/** Least height of the voltage and the current axis, in V and A, so that noise does not fill a panel. Our choice. */
const LEAST_SPAN_V = 0.5;
const LEAST_SPAN_A = 0.5;
/** Room behind the last point, of the length of the axis. */
const BEYOND_FRAC = 0.03;
const MOST_TICKS = { voltage: 5, current: 4 };

/**
 * Voltage against time or charge, several runs over one another, each named at its end and ended by a sign that says
 * how; current in a panel below if asked. Higher than `height` if that leaves the panels no room.
 */
export function runPlot(input: RunPlotInput): Drawing {
  const { width, words, by } = input;
  requireFinite('runPlot: size', [width, input.height]);
  const runs = placedRuns(input.runs, by, input.current);
  const xRange = valueRange([0, ...runs.placed.flatMap(({ xs }) => xs)]);
  const plans = [voltagePlan(runs, input), ...(input.current ? [currentPlan(runs, input)] : [])].filter(
    (plan) => plan !== null,
  );
  if (xRange === null || plans.length === 0) {
    return emptyFrame({ width, height: input.height, alt: words.alt, nothing: words.nothing });
  }
  const endings = [...new Set(runs.placed.map(({ run }) => run.end))];
  const key = keyRows(
    endings.map((end) => ({ text: words.ends[end], sign: (x, y) => endKeySign(end, x, y) })),
    width,
  );
  const note = noteRows(runs.left.length === 0 ? '' : words.notDrawn(runs.left.map((run) => run.label)), width);
  const below = 4 + key.height + note.height;
  const height = Math.max(input.height, leastPanelsHeight(plans.length) + below);
  const { low, high } = atLeastWide(xRange, 1e-3);
  return {
    width,
    height,
    alt: words.alt,
    marks: [
      ...stackedPanels({
        width,
        top: 0,
        bottom: height - below,
        plans,
        xRange: { low, high: high + (high - low) * BEYOND_FRAC },
        xTitle: by === 'charge' ? words.charge : words[runs.unit.name],
        tick: words.tick,
        room: labelRoom({ left: 0, top: 0, right: width, bottom: height - below }),
      }),
      ...key.marksAt(height - below + 4),
      ...note.marksAt(height - note.height),
    ],
  };
}

function voltagePlan({ placed }: PlacedRuns, { words }: RunPlotInput): PanelPlan | null {
  const cutOffsV = [...new Set(placed.flatMap(({ run }) => run.cutOffVoltageV ?? []))];
  const voltagesV = placed.flatMap(({ run }) => run.voltageV ?? []);
  const range = voltagesV.length === 0 ? null : valueRange([...voltagesV, ...cutOffsV]);
  if (range === null) return null;
  return {
    title: words.voltage,
    range: framedTicks(atLeastWide(range, LEAST_SPAN_V), MOST_TICKS.voltage),
    levels: cutOffsV.map((value) => ({ value, text: words.cutOff(value) })),
    weight: 2,
    curves: placed.flatMap(({ run, xs }, place) =>
      run.voltageV === null ? [] : [curveOf({ run, xs }, place, { ys: run.voltageV, named: true })],
    ),
  };
}

function currentPlan({ placed }: PlacedRuns, { words }: RunPlotInput): PanelPlan | null {
  const currentsA = placed.flatMap(({ run }) => run.currentA ?? []);
  const range = currentsA.length === 0 ? null : valueRange([0, ...currentsA]);
  if (range === null) return null;
  const wide = range.high - range.low >= LEAST_SPAN_A ? range : { ...range, high: range.low + LEAST_SPAN_A };
  return {
    title: words.current,
    range: framedTicks(wide, MOST_TICKS.current),
    levels: [],
    weight: 1,
    curves: placed.flatMap(({ run, xs }, place) =>
      run.currentA === null ? [] : [curveOf({ run, xs }, place, { ys: run.currentA, named: run.voltageV === null })],
    ),
  };
}

function curveOf({ run, xs }: PlacedRun, place: number, { ys, named }: { ys: readonly number[]; named: boolean }) {
  return {
    xs,
    ys,
    look: curveLook(place),
    sign: (x: number, y: number, isSteep: boolean) => endSign(run.end, [x, y], isSteep),
    label: named ? run.label : null,
  };
}
