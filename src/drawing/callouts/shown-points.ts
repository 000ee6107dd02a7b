import type { DrawnCallout, PhotoFrame } from '../callouts.ts';
import type { Point } from '../turn-point.ts';

/** A callout's points from image coordinates, 0–1, to the size at which the photo is shown. */
export function shownPoints(callout: Pick<DrawnCallout, 'points'>, frame: PhotoFrame): Point[] {
  return callout.points.map(([x, y]) => [x * frame.widthPx, y * frame.heightPx]);
}
