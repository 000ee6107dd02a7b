import * as v from 'valibot';
import { stampSchema } from './stamp.ts';
import { idSchema, lineSchema, sha256Schema } from './text-limits.ts';

/** Our choice: five minutes are longer than anybody listens to, and at a recorder's usual rate some 5 MB. */
export const MAX_VOICE_S = 300;
export const MAX_VOICE_BYTES = 10 * 1024 * 1024;

/** What the recorders of the browsers write. */
export const VOICE_TYPES = ['audio/webm', 'audio/mp4', 'audio/ogg'] as const;
export type VoiceType = (typeof VOICE_TYPES)[number];

/** Something said about an item or a photo. Part: the SHA-256 of its bytes, which never leave the phone but in a bundle. */
export const voiceNoteSchema = v.looseObject({
  on: v.variant('kind', [
    v.looseObject({ kind: v.literal('item'), id: idSchema }),
    v.looseObject({ kind: v.literal('photo'), id: sha256Schema }),
  ]),
  type: v.picklist(VOICE_TYPES),
  byteCount: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(MAX_VOICE_BYTES)),
  durationS: v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(MAX_VOICE_S + 10)),
  made: stampSchema,
  label: v.optional(lineSchema),
});
export type VoiceNote = v.InferOutput<typeof voiceNoteSchema>;
