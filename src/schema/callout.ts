import * as v from 'valibot';
import { stampSchema } from './stamp.ts';
import { idSchema, sha256Schema } from './text-limits.ts';

/** Leader: dot, line, ring with a number. Cover hides a part of the picture and is burnt in on export. */
export const CALLOUT_KINDS = ['leader', 'arrow', 'outline', 'stroke', 'text', 'cover'] as const;
export type CalloutKind = (typeof CALLOUT_KINDS)[number];

/** Image coordinates, 0–1 from the left and from the top of the upright picture, at most 4 decimals. */
export const MAX_CALLOUT_POINTS = 64;
const coordinate = v.pipe(v.number(), v.minValue(0), v.maxValue(1));
const pointSchema = v.strictTuple([coordinate, coordinate]);
export type ImagePoint = v.InferOutput<typeof pointSchema>;

/**
 * Points by kind. leader: where it points, then where the number stands. arrow: head, then tail. outline and cover:
 * two opposite corners of a box. stroke: the pen's path. text: where the text begins.
 */
export const calloutSchema = v.looseObject({
  photoId: sha256Schema,
  kind: v.picklist(CALLOUT_KINDS),
  points: v.pipe(v.array(pointSchema), v.minLength(1), v.maxLength(MAX_CALLOUT_POINTS)),
  /** Legend of a leader, or the words of a text callout. */
  text: v.optional(v.pipe(v.string(), v.maxLength(320))),
  /** The item this callout shows, if any. */
  itemId: v.optional(idSchema),
  /** Orders the numbers of one photo; stays when the callout is moved or reworded. */
  made: stampSchema,
});
export type Callout = v.InferOutput<typeof calloutSchema>;
