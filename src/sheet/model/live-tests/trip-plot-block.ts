import { FUSE_FAMILIES } from '../../../calc/tables/fuse-gates.ts';
import { fuseGatePoints } from '../../../calc/time-current-curves.ts';
import { type TripPlotInput, tripPlot, type WithstandCurve } from '../../../drawing/trip-plot.ts';
import { fuseResult } from '../../../grading/live-tests/fuse-result.ts';
import { leadResults } from '../../../grading/live-tests/lead-result.ts';
import type { OvercurrentResult } from '../../../grading/live-tests/results.ts';
import { figure, figureIn } from '../../../text/live-tests/results/figures.ts';
import { tripPlotWords as say } from '../../../text/live-tests/results/over-current.ts';
import type { PlotBlock } from '../sheet.ts';
import { leadName } from './lead-name.ts';
import type { LiveContext } from './live-context.ts';
import { PLOT_HEIGHT, PLOT_WIDTH } from './plot-size.ts';
import { tripWords } from './trip-words.ts';
import { withstandTime } from './withstand-words.ts';

/** Trips by decades, beside what the main leads stand and when the advised fuse opens. */
export function tripPlotBlock(result: OvercurrentResult, context: LiveContext): PlotBlock {
  const fuse = fuseOf(context);
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
    caption: fuse === null ? say.caption : say.captionFuse(fuse.rating, fuse.kind),
  };
}

interface DrawnFuse {
  rating: string;
  kind: string;
  gates: NonNullable<TripPlotInput['fuse']>['gates'];
}

/** Most a blade or bolt-in fuse of its family is made for. */
const BOLT_IN_MOST_V = 32;

/**
 * Gates of the advised size, by a family whose times were read and that is made for the voltage. Without one nothing is
 * drawn: of class T, the usual terminal fuse, no times are known.
 */
function fuseOf(context: LiveContext): DrawnFuse | null {
  const { advice } = fuseResult(context);
  if (advice.fits !== true) return null;
  const isLow = advice.dcVoltageV <= BOLT_IN_MOST_V;
  const family = FUSE_FAMILIES.find(({ id }) => id === (isLow ? 'bolt-in-32v' : 'ul248-2-c'));
  const gates = family === undefined ? [] : fuseGatePoints(family, advice.ratingA);
  if (gates.length === 0) return null;
  return {
    rating: figureIn(advice.ratingA, 'A'),
    kind: isLow ? say.families.boltIn : say.families.classC,
    gates: gates.map(({ currentA, minTimeS = null, maxTimeS = null }) => ({ currentA, minTimeS, maxTimeS })),
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
    label: say.lead(leadName(withstand.leadId, context)),
    points: endsA.map((currentA) => ({
      currentA,
      timeS: withstand.timeS * (withstand.currentA / currentA) ** 2,
    })),
  }));
}
