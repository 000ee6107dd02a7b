import type { PictureLimits } from '../../schema/jpeg-picture.ts';
import { MAX_VOICE_BYTES } from '../../schema/voice-note.ts';
import type { Shelf } from '../store.ts';
import type { BundlePath } from './bundle-paths.ts';

const MEGABYTE = 1024 * 1024;

/** Size of one zip part. DESIGN §9. */
export const MAX_PART_BYTES = 256 * MEGABYTE;

/** Files in one part. fflate writes no zip64, whose limit is 65 535; the manifest's own limit is 60 000. */
export const MAX_FILES = 60_000;

/** Bytes of all files of a part unpacked. Our choice: photos hardly shrink, so twice the part leaves room for text. */
export const MAX_UNPACKED_BYTES = 2 * MAX_PART_BYTES;

/**
 * Bytes of one log, here and in the app. Our choice: a day at ten rows a second with 70 characters a row takes 58 MB.
 */
export const MAX_LOG_BYTES = 64 * MEGABYTE;

/**
 * Bytes of one file by its kind, looked at before it is read, so that memory is bounded. Our choice: a pack of 2000
 * entries takes about 1 MB; a manifest of 60 000 lines 15 MB; a sealed sheet about 1 MB; an original of 100 megapixels at
 * its finest about 100 MB.
 */
export const MAX_JSON_BYTES = 32 * MEGABYTE;
const MAX_DEFINITION_BYTES = 4 * MEGABYTE;
const MAX_BYTES: Readonly<Record<Shelf, number>> = {
  photos: 64 * MEGABYTE,
  thumbs: 4 * MEGABYTE,
  originals: 192 * MEGABYTE,
  logs: MAX_LOG_BYTES,
  sealed: MAX_JSON_BYTES,
  voices: MAX_VOICE_BYTES,
};

export function maxBytesOf(place: BundlePath): number {
  if (place.kind === 'bytes') return MAX_BYTES[place.shelf];
  return place.kind === 'definitions' ? MAX_DEFINITION_BYTES : MAX_JSON_BYTES;
}

/**
 * Sizes of pictures. Our choice: intake keeps 4096 px (320 px of a thumbnail) and takes at most 100 megapixels in; twice
 * that is room for a later version. 20 000 px a side is the entry's own limit.
 */
export const PICTURE_LIMITS: Readonly<Record<'photos' | 'thumbs' | 'originals', PictureLimits>> = {
  photos: { sidePx: 8192, pixels: 50e6 },
  thumbs: { sidePx: 1024, pixels: 1e6 },
  originals: { sidePx: 20_000, pixels: 200e6 },
};

/** Unpacked over packed size above which a file is taken for a bomb. Our choice: entries at level 6 measured 3 to 25. */
export const MAX_RATIO = 200;

/** Below this size the ratio is not looked at: a short file of zeros harms nobody. Our choice. */
export const RATIO_FROM_BYTES = MEGABYTE;

/**
 * Stamps from 2100 on are refused: they would push this phone's clock there for good. Our choice. One that is only ahead
 * of this phone's clock is not: a phone whose clock has stopped, back in 1970, must still be able to restore. It is said.
 */
export const FIRST_IMPOSSIBLE_MS = Date.UTC(2100, 0, 1);
