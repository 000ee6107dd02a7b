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

/** Unpacked over packed size above which a file is taken for a bomb. Our choice: entries at level 6 measured 3 to 25. */
export const MAX_RATIO = 200;

/** Below this size the ratio is not looked at: a short file of zeros harms nobody. Our choice. */
export const RATIO_FROM_BYTES = MEGABYTE;

/** Stamps from 2100 on are refused: they would push this phone's clock there for good. Our choice. */
export const FIRST_IMPOSSIBLE_MS = Date.UTC(2100, 0, 1);
