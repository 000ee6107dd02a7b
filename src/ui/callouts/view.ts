import type { ImagePoint } from '../../schema/callout.ts';

export type StagePoint = [x: number, y: number];

/** How the photo lies on the stage: how often it is magnified against fitting in whole, and where its corner is. */
export interface View {
  zoom: number;
  leftPx: number;
  topPx: number;
}

export interface StageSize {
  stageWidthPx: number;
  stageHeightPx: number;
  photoWidthPx: number;
  photoHeightPx: number;
}

export const MOST_ZOOM = 8;

/** Size at which the whole photo is shown, at zoom 1 unless told otherwise. */
export function shownSize(size: StageSize, zoom = 1): { widthPx: number; heightPx: number } {
  const fit = Math.min(size.stageWidthPx / size.photoWidthPx, size.stageHeightPx / size.photoHeightPx);
  return { widthPx: size.photoWidthPx * fit * zoom, heightPx: size.photoHeightPx * fit * zoom };
}

/** The whole photo in the middle of the stage. */
export function wholeView(size: StageSize): View {
  return heldView({ zoom: 1, leftPx: 0, topPx: 0 }, size);
}

/**
 * Keeps the zoom in its bounds, a photo smaller than the stage in its middle, and a larger one over all of it, but for
 * a margin that lets its corners out from under the buttons.
 */
export function heldView(view: View, size: StageSize): View {
  const zoom = Math.min(Math.max(view.zoom, 1), MOST_ZOOM);
  const shown = shownSize(size, zoom);
  return {
    zoom,
    leftPx: heldEdge(view.leftPx, shown.widthPx, size.stageWidthPx),
    topPx: heldEdge(view.topPx, shown.heightPx, size.stageHeightPx),
  };
}

/** Magnifies by a factor about a point of the stage, which keeps what lies under it. */
export function zoomAbout(view: View, { factor, at }: { factor: number; at: StagePoint }, size: StageSize): View {
  const zoom = Math.min(Math.max(view.zoom * factor, 1), MOST_ZOOM);
  const grown = zoom / view.zoom;
  return heldView(
    { zoom, leftPx: at[0] - (at[0] - view.leftPx) * grown, topPx: at[1] - (at[1] - view.topPx) * grown },
    size,
  );
}

export function panBy(view: View, [acrossPx, downPx]: StagePoint, size: StageSize): View {
  return heldView({ ...view, leftPx: view.leftPx + acrossPx, topPx: view.topPx + downPx }, size);
}

/** Two fingers move from one pair of places to another: the photo follows both. */
export function pinchView(view: View, { from, to }: { from: StagePair; to: StagePair }, size: StageSize): View {
  const apart = distancePx(from);
  const factor = apart === 0 ? 1 : distancePx(to) / apart;
  const middle = middleOf(from);
  const target = middleOf(to);
  return panBy(zoomAbout(view, { factor, at: middle }, size), [target[0] - middle[0], target[1] - middle[1]], size);
}
export type StagePair = [StagePoint, StagePoint];

/** Where on the picture a point of the stage lies; outside it, below 0 or above 1. */
export function toImage([x, y]: StagePoint, view: View, size: StageSize): ImagePoint {
  const shown = shownSize(size, view.zoom);
  return [(x - view.leftPx) / shown.widthPx, (y - view.topPx) / shown.heightPx];
}

export function toStage([x, y]: ImagePoint, view: View, size: StageSize): StagePoint {
  const shown = shownSize(size, view.zoom);
  return [view.leftPx + x * shown.widthPx, view.topPx + y * shown.heightPx];
}

/** A button of 48 px and its distance from the edge. */
const CORNER_MARGIN_PX = 72;

function heldEdge(edgePx: number, shownPx: number, stagePx: number): number {
  if (shownPx <= stagePx) return (stagePx - shownPx) / 2;
  return Math.min(CORNER_MARGIN_PX, Math.max(edgePx, stagePx - shownPx - CORNER_MARGIN_PX));
}

function distancePx([a, b]: StagePair): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

function middleOf([a, b]: StagePair): StagePoint {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}
