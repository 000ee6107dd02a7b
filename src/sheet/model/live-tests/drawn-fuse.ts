import { FUSE_FAMILIES } from '../../../calc/tables/fuse-gates.ts';
import { fuseGatePoints } from '../../../calc/time-current-curves.ts';
import type { FuseGate } from '../../../drawing/trip-plot.ts';
import { fuseResult } from '../../../grading/live-tests/fuse-result.ts';
import { figureIn } from '../../../text/live-tests/results/figures.ts';
import { tripPlotWords as say } from '../../../text/live-tests/results/over-current.ts';
import type { CalculationSource } from '../../../text/live-tests/results/sources.ts';
import type { LiveContext } from './live-context.ts';

/** The advised fuse as it is drawn beside the trips. */
export interface DrawnFuse {
  rating: string;
  kind: string;
  gates: FuseGate[];
  source: CalculationSource;
}

/** Most a blade or bolt-in fuse of its family is made for. */
const BOLT_IN_MOST_V = 32;

/**
 * Gates of the advised size, by a family whose times were read and that is made for the voltage. Without one nothing is
 * drawn: of class T, the usual terminal fuse, no times are known.
 */
export function drawnFuse(context: LiveContext): DrawnFuse | null {
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
    source: isLow ? 'boltInGates' : 'classCGates',
  };
}
