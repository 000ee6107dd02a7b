import * as v from 'valibot';
import { countFrom } from './figure-limits.ts';
import { stampSchema } from './stamp.ts';
import { randomIdSchema, sha256Schema } from './text-limits.ts';

/** Name at the head of every manifest, so that a stray zip is refused at once. */
export const BUNDLE_FORMAT = 'underlid-bundle';

const fileSchema = v.strictObject({
  path: v.pipe(v.string(), v.minLength(1), v.maxLength(200)),
  byteCount: countFrom(0),
  sha256: sha256Schema,
  type: v.optional(v.string()),
});

/** Our choice: ten thousand parts of 256 MB are more than a phone has. */
const partNumber = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(10_000));

/** `manifest.json` of one part of a bundle. Every part stands alone: its entries, definitions and bytes are whole. */
export const manifestSchema = v.looseObject({
  format: v.literal(BUNDLE_FORMAT),
  schemaVersion: v.pipe(v.number(), v.integer(), v.minValue(1)),
  appVersion: v.string(),
  bundleId: randomIdSchema,
  part: partNumber,
  parts: partNumber,
  newest: stampSchema,
  packIds: v.array(randomIdSchema),
  files: v.pipe(v.array(fileSchema), v.maxLength(60_000)),
});
export type Manifest = v.InferOutput<typeof manifestSchema>;

/** Why a bundle is refused. Nothing of a refused bundle is ever written. Sentences are in text/bundle.ts. */
export const BUNDLE_REFUSALS = [
  'notAZip',
  'damagedZip',
  'encrypted',
  'unsafePath',
  'duplicatePath',
  'tooLarge',
  'notABundle',
  'newer',
  'badManifest',
  'missingFile',
  'unlistedFile',
  'checksum',
  'badJson',
  'badEntry',
  'duplicateEntry',
  'impossibleDate',
  'notAPhoto',
  'hugePicture',
  'otherPicture',
  'badSealed',
  'notAVoice',
  'unreadable',
  'badDefinition',
  'migrationFailed',
] as const;
export type BundleRefusal = (typeof BUNDLE_REFUSALS)[number];
