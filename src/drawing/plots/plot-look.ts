import type { Stroke } from '../display-list.ts';
import type { TextFace } from '../text-width.ts';

/** Smallest words of a plot: figures at ticks. Nothing on a phone is smaller than 11 units. */
export const FIGURE: TextFace = { size: 11.5, weight: 400 };
/** Names at curves, titles of axes, keys. */
export const SMALL: TextFace = { size: 12.5, weight: 400 };
/** Names that lead: a run's at its end, a row's. */
export const NAME: TextFace = { size: 12.5, weight: 600 };

export const AXIS_STROKE: Stroke = { ink: 'ink', width: 1 };
export const GRID_STROKE: Stroke = { ink: 'line', width: 0.8 };
