import { tripPlot, type WithstandCurve } from '../../../drawing/trip-plot.ts';
import { leadResults } from '../../../grading/live-tests/lead-result.ts';
import type { OvercurrentResult } from '../../../grading/live-tests/results.ts';
import { figure, figureIn } from '../../../text/live-tests/results/figures.ts';
import { tripPlotWords as say } from '../../../text/live-tests/results/over-current.ts';
import type { PlotBlock } from '../sheet.ts';
import { type DrawnFuse, drawnFuse } from './drawn-fuse.ts';
import { leadName, leadNumber } from './lead-name.ts';
import type { LiveContext } from './live-context.ts';
import { PLOT_HEIGHT, PLOT_WIDTH } from './plot-size.ts';
import { tripWords } from './trip-words.ts';
import { withstandTime } from './withstand-words.ts';

/** Trips by decades, beside what the main leads stand and when the advised fuse opens. */
export function tripPlotBlock(result: OvercurrentResult, context: LiveContext): PlotBlock {
  const fuse = drawnFuse(context);
  const { trips } = result;
  const stands = leadsThatStand(context);
  const described = [
    ...trips.map((trip) => say.altTrip(figureIn(trip.currentA, 'A'), tripWords(trip))),
    ...stands.map((withstand) =>
      say.altLead(leadName(withstand.leadId, context), figureIn(withstand.currentA, 'A'), withstandTime(withstand)),
    ),
  ];
  return {
    kind: 'plot',
    drawing: tripPlot({
      width: PLOT_WIDTH,
      height: PLOT_HEIGHT.trips,
      trips: trips.map(({ currentA, heldForS, opened }) => ({
        currentA,
        timeS: heldForS,
        opened,
        label: figureIn(currentA, 'A'),
      })),
      withstand: withstandCurves(result, context, fuse),
      fuse: fuse === null ? null : { label: say.fuse(fuse.rating, fuse.kind), gates: fuse.gates },
      continuousA: context.nameplate.continuousCurrentA ?? null,
      words: { ...say, alt: say.alt(described), tickA: figure, tickS: figure },
    }),
    caption:
      fuse !== null ? say.captionFuse(fuse.rating, fuse.kind) : stands.length > 0 ? say.caption : say.captionTrips,
  };
}

/** A lead that is as warm as it may get from the start stands nothing, and has no line. */
function leadsThatStand(context: LiveContext) {
  return leadResults(context).flatMap(({ lead, withstand }) =>
    lead.place === 'main' && withstand !== null && withstand.timeS > 0 ? [withstand] : [],
  );
}

/** Beside a single current, a line is drawn from half to twice of it. */
const BESIDE = 2;

/** t goes with 1 ÷ I², which is a straight line by decades: its two ends are enough. */
function withstandCurves(result: OvercurrentResult, context: LiveContext, fuse: DrawnFuse | null): WithstandCurve[] {
  const { continuousCurrentA } = context.nameplate;
  const currentsA = [
    ...result.trips.map(({ currentA }) => currentA),
    ...(continuousCurrentA === undefined ? [] : [continuousCurrentA]),
    ...(fuse?.gates ?? []).map(({ currentA }) => currentA),
  ];
  const [lowA, highA] = [Math.min(...currentsA), Math.max(...currentsA)];
  const endsA = lowA < highA ? [lowA, highA] : [lowA / BESIDE, highA * BESIDE];
  return leadsThatStand(context).map((withstand) => ({
    label: say.lead(leadNumber(withstand.leadId, context)),
    points: endsA.map((currentA) => ({
      currentA,
      timeS: withstand.timeS * (withstand.currentA / currentA) ** 2,
    })),
  }));
}
