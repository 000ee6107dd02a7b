import * as v from 'valibot';
import { countFrom } from './figure-limits.ts';
import { stampSchema } from './stamp.ts';
import { idSchema, lineSchema, sha256Schema } from './text-limits.ts';

const pixels = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(20_000));

const TAKEN_AT = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d:([0-5]\d|60)(Z|[+-]\d\d:\d\d)?$/;

/** Where a photo can be that shows no zone. No zone is called so. */
export const PHOTO_PLACES_OUTSIDE = ['arrival', 'nameplate', 'make-safe', 'afterwards'] as const;

/** What a record knows of a photo. The photo's id (the entry's part) is the SHA-256 of its stored JPEG bytes. */
export const photoSchema = v.looseObject({
  /** A zone's id, or one of PHOTO_PLACES_OUTSIDE. */
  zone: idSchema,
  widthPx: pixels,
  heightPx: pixels,
  byteCount: countFrom(1),
  /** Local time from the camera, `YYYY-MM-DDThh:mm:ss` with offset where the camera gave one. */
  takenAt: v.optional(v.pipe(v.string(), v.regex(TAKEN_AT, 'must be a date and time'))),
  originalSha256: sha256Schema,
  /** The original's bytes are kept, stripped of metadata, under this hash. */
  keptOriginal: v.optional(sha256Schema),
  detail: v.optional(v.boolean()),
  caption: v.optional(lineSchema),
  made: stampSchema,
});
export type Photo = v.InferOutput<typeof photoSchema>;

/** Image bytes as stored: never a Blob (private sessions of one engine refuse them). */
export interface PhotoBytes {
  type: string;
  bytes: ArrayBuffer;
}
