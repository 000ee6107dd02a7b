/** Longer side of a stored photo, of one with detail, and of the thumbnail (DESIGN §8; 320 px is our choice, two columns on a phone). */
export const STORED_LONGEST_PX = 2048;
export const DETAIL_LONGEST_PX = 4096;
export const THUMB_LONGEST_PX = 320;

/** Our choice: the smallest setting at which sharp-edged print on a label shows no blocks to the eye. */
export const JPEG_QUALITY = 0.85;
/** A covered picture is encoded a second time; the finer setting keeps that loss unseen. Our choice. */
export const COVERED_JPEG_QUALITY = 0.9;

/** Our choice: room for the 48 and 50 megapixel settings of phones; decoded, 100 take 400 MB, about what a phone's tab can hold. */
export const MOST_PIXELS = 100e6;
/** Our choice: a lossless picture of 100 megapixels; anything larger is not a photo from a phone. */
export const MOST_BYTES = 300e6;
/** Our choice: a sound picture above this that fails to decode has met the end of the phone's memory, not a fault of its own. */
export const MEMORY_SUSPECT_PIXELS = 24e6;
