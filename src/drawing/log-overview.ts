import type { Drawing } from './display-list.ts';
import { emptyFrame } from './plots/empty-frame.ts';

export interface LogBand {
  fromS: number;
  toS: number;
  label: string;
  chosen: boolean;
}

export interface LogOverviewWords {
  alt: string;
  nothing: string;
  /** Titles of the axes with their units. */
  voltage: string;
  current: string;
  seconds: string;
  minutes: string;
  hours: string;
  tick: (value: number, decimals: number) => string;
}

export interface LogOverviewInput {
  width: number;
  height: number;
  timeS: readonly number[];
  voltageV: readonly number[] | null;
  currentA: readonly number[] | null;
  bands: readonly LogBand[];
  words: LogOverviewWords;
}

/** A whole log at a glance, the runs found in it as bands, those chosen drawn strong. */
export function logOverview({ width, height, words }: LogOverviewInput): Drawing {
  return emptyFrame({ width, height, alt: words.alt, nothing: words.nothing });
}
