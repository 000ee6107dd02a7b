import type { Drawing } from './display-list.ts';
import { emptyFrame } from './plots/empty-frame.ts';
import { labelRoom } from './plots/label-room.ts';
import { BAND_LABEL_HEIGHT, bandLabels, bandMarks } from './plots/log-bands.ts';
import { framedTicks } from './plots/nice-ticks.ts';
import { requireFinite, requireSeries } from './plots/require-finite.ts';
import { leastPanelsHeight, type PanelPlan, stackedPanels } from './plots/stacked-panels.ts';
import { timeUnitFor } from './plots/time-unit.ts';
import { atLeastWide, valueRange } from './plots/value-range.ts';

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

/** Least height of an axis, in V or A, so that noise does not fill a panel. Our choice. */
const LEAST_SPAN = 0.5;
const MOST_TICKS = 3;

/**
 * A whole log at a glance, the runs found in it as bands behind the curves, those chosen drawn strong. Time begins at 0
 * with the log; of a band only what lies inside the log is drawn. Higher than `height` if that leaves the panels no room.
 */
export function logOverview(input: LogOverviewInput): Drawing {
  const { width, timeS, words } = input;
  requireOverview(input);
  const rangeS = valueRange(timeS);
  const plans = rangeS === null ? [] : plansOf(input, rangeS.low);
  if (rangeS === null || plans.length === 0) {
    return emptyFrame({ width, height: input.height, alt: words.alt, nothing: words.nothing });
  }
  const unit = timeUnitFor(rangeS.high - rangeS.low);
  const height = Math.max(input.height, leastPanelsHeight(plans.length) + BAND_LABEL_HEIGHT);
  const room = labelRoom({ left: 0, top: 0, right: width, bottom: height });
  const bands = input.bands
    .filter((band) => band.toS >= rangeS.low && band.fromS <= rangeS.high)
    .map(({ fromS, toS, ...band }) => ({
      ...band,
      from: (Math.max(fromS, rangeS.low) - rangeS.low) / unit.inS,
      to: (Math.min(toS, rangeS.high) - rangeS.low) / unit.inS,
    }));
  const { high } = atLeastWide({ low: 0, high: (rangeS.high - rangeS.low) / unit.inS }, 1e-3);
  return {
    width,
    height,
    alt: words.alt,
    marks: stackedPanels({
      width,
      top: 0,
      bottom: height,
      plans: plans.map((plan, place) => ({
        ...plan,
        headroom: place === 0 && bands.length > 0 ? BAND_LABEL_HEIGHT : 0,
        curves: plan.curves.map((curve) => ({ ...curve, xs: curve.xs.map((afterS) => afterS / unit.inS) })),
      })),
      xRange: { low: 0, high },
      xTitle: words[unit.name],
      tick: words.tick,
      room,
      behind: ({ x, panels }) => [...bandMarks(bands, x, panels), ...bandLabels({ bands, x, room, panel: panels[0] })],
    }),
  };
}

function requireOverview({ width, height, timeS, voltageV, currentA, bands }: LogOverviewInput): void {
  requireFinite('logOverview: size', [width, height]);
  requireFinite('logOverview: timeS', timeS);
  if (voltageV !== null) requireSeries('logOverview: voltageV', voltageV, timeS.length);
  if (currentA !== null) requireSeries('logOverview: currentA', currentA, timeS.length);
  requireFinite(
    'logOverview: bands',
    bands.flatMap((band) => [band.fromS, band.toS]),
  );
  for (const { fromS, toS } of bands) {
    if (toS < fromS) throw new RangeError(`logOverview: a band must not end before it begins, got ${fromS} to ${toS}`);
  }
}

/** One panel for each column the log has; its places still in seconds from the log's beginning. */
function plansOf({ timeS, voltageV, currentA, words }: LogOverviewInput, startS: number): PanelPlan[] {
  const xs = timeS.map((at) => at - startS);
  const planOf = (title: string, ys: readonly number[], withZero: readonly number[]): PanelPlan[] => {
    const range = valueRange([...ys, ...withZero]);
    if (range === null) return [];
    return [
      {
        title,
        range: framedTicks(atLeastWide(range, LEAST_SPAN), MOST_TICKS),
        curves: [{ xs, ys, look: { ink: 'ink', width: 1.4, join: 'round' }, sign: null, label: null }],
        levels: [],
        weight: 1,
      },
    ];
  };
  return [
    ...(voltageV === null ? [] : planOf(words.voltage, voltageV, [])),
    ...(currentA === null ? [] : planOf(words.current, currentA, [0])),
  ];
}
