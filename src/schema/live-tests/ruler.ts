import * as v from 'valibot';
import { above0, from0 } from '../figure-limits.ts';
import { stampSchema } from '../stamp.ts';
import { lineSchema, sha256Schema } from '../text-limits.ts';

const coordinate = v.pipe(v.number(), v.minValue(0), v.maxValue(1));
const point = v.strictTuple([coordinate, coordinate]);

/** A distance on a photo, by the four corners of an ISO/IEC 7810 ID-1 card in it. Image coordinates as for callouts. */
export const rulerSchema = v.looseObject({
  photoId: sha256Schema,
  /** In order round the card, beginning with a corner whose next side is a long one. */
  corners: v.strictTuple([point, point, point, point]),
  from: point,
  to: point,
  label: v.optional(lineSchema),
  /** How far the measured thing may lie off the plane of the card, and how far away the camera was. */
  offPlaneMm: v.optional(from0('mm')),
  cameraMm: v.optional(above0('mm')),
  made: stampSchema,
});
export type Ruler = v.InferOutput<typeof rulerSchema>;
