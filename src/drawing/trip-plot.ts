import type { Drawing } from './display-list.ts';
import { emptyFrame } from './plots/empty-frame.ts';

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

/** Time against current, both by decades: what tripped, what the leads stand, when the fuse opens. */
export function tripPlot({ width, height, words }: TripPlotInput): Drawing {
  return emptyFrame({ width, height, alt: words.alt, nothing: words.nothing });
}
