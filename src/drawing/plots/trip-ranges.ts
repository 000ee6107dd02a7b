import type { TripPlotInput } from '../trip-plot.ts';
import { logFrame } from './log-ticks.ts';
import { requireFinite, requirePositive } from './require-finite.ts';
import { type ValueRange, valueRange } from './value-range.ts';

/** Room beside the outermost marks, as a ratio; above the highest time there is an arrow to draw. Our choice. */
const BESIDE = 1.12;
const ABOVE = 1.6;
/** Times shown where nothing has one. */
const TIME_WITHOUT_S: ValueRange = { low: 0.1, high: 10 };

/** What both axes must hold, moved outward to 1, 2 or 5 of a decade; null when there is nothing to draw. */
export function tripRanges(input: TripPlotInput): { currentA: ValueRange; timeS: ValueRange } | null {
  const { trips, withstand, fuse, continuousA } = input;
  const points = withstand.flatMap((curve) => curve.points);
  const gates = fuse?.gates ?? [];
  if (trips.length + points.length + gates.length === 0) return null;
  const gateTimesS = gates.flatMap((gate) => [gate.minTimeS ?? [], gate.maxTimeS ?? []].flat());
  const currentsA = [...trips, ...points, ...gates].map((mark) => mark.currentA);
  if (continuousA !== null) currentsA.push(continuousA);
  requirePositive('tripPlot: currentA', currentsA);
  requirePositive(
    'tripPlot: withstand timeS',
    points.map((point) => point.timeS),
  );
  const otherTimesS = [...trips.map((trip) => trip.timeS), ...gateTimesS];
  requireFinite('tripPlot: timeS', otherTimesS);
  if (otherTimesS.some((timeS) => timeS < 0)) throw new RangeError('tripPlot: timeS must not be below 0');
  const timesS = [...points.map((point) => point.timeS), ...otherTimesS.filter((timeS) => timeS > 0)];
  const currentA = valueRange(currentsA) ?? { low: 1, high: 1 };
  const timeS = valueRange(timesS) ?? TIME_WITHOUT_S;
  return {
    currentA: logFrame({ low: currentA.low / BESIDE, high: currentA.high * BESIDE }),
    timeS: logFrame({ low: timeS.low / BESIDE, high: timeS.high * ABOVE }),
  };
}
