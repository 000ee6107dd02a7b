import { type JpegLayout, type JpegSegment, MARKER } from '../schema/jpeg-layout.ts';
import type { Orientation } from './orientation.ts';
import { textAt } from './sniff-format.ts';

export interface KeptMetadata {
  /** Keep the ICC profile, without which the colours of an original would shift. */
  colourProfile: boolean;
  /** Write this orientation into an Exif block of its own, the only tag in it; null writes none. */
  orientation: Orientation | null;
}

/**
 * The same JPEG without a single metadata segment, lossless: the compressed picture is copied byte for byte.
 * Gone are every APPn (Exif with position, XMP, IPTC, MPF, maker's own), every comment, also between scans, the preview
 * inside a JFIF header, and all that follows the picture. Kept are the tables, the bare JFIF header and Adobe's
 * transform flag, without which the picture decodes to other colours.
 *
 * Throws  RangeError if the layout is not that of a complete JPEG.
 * Check   tests/photos/strip-metadata.test.ts
 */
export function stripMetadata(bytes: Uint8Array, layout: JpegLayout, kept: KeptMetadata): Uint8Array<ArrayBuffer> {
  if (!layout.complete) throw new RangeError('stripMetadata: needs a complete JPEG, got one that breaks off');
  const segments = layout.segments.map((segment) => cleanSegment(bytes, segment, kept));
  const exif = kept.orientation === null ? [] : [orientationSegment(kept.orientation)];
  // JFIF wants to be first, Exif next: the order cameras and viewers agree on.
  const [jfif, rest] = isJfif(bytes, layout.segments[0]) ? [segments.slice(0, 1), segments.slice(1)] : [[], segments];
  return joined([SOI, ...jfif, ...exif, ...rest, EOI]);
}

const SOI = Uint8Array.of(0xff, MARKER.SOI);
const EOI = Uint8Array.of(0xff, MARKER.EOI);
const NOTHING = new Uint8Array(0);

function cleanSegment(bytes: Uint8Array, segment: JpegSegment, kept: KeptMetadata): Uint8Array {
  const { marker, start, end } = segment;
  // APP0–APP15, then JPG0–JPG13 and COM: none of them is needed to decode the picture.
  if (marker < MARKER.APP0) return bytes.subarray(start, end);
  if (isJfif(bytes, segment)) return bareJfif(bytes, start);
  if (isAdobe(bytes, segment)) return bareAdobe(bytes, start);
  if (kept.colourProfile && isColourProfile(bytes, segment)) return bytes.subarray(start, end);
  return NOTHING;
}

function isJfif(bytes: Uint8Array, segment: JpegSegment | undefined): boolean {
  return (
    segment?.marker === 0xe0 && segment.end - segment.start >= 18 && textAt(bytes, segment.start + 4, 5) === 'JFIF\0'
  );
}

function isAdobe(bytes: Uint8Array, { marker, start, end }: JpegSegment): boolean {
  return marker === 0xee && end - start >= 16 && textAt(bytes, start + 4, 5) === 'Adobe';
}

function isColourProfile(bytes: Uint8Array, { marker, start }: JpegSegment): boolean {
  return marker === 0xe2 && textAt(bytes, start + 4, 12) === 'ICC_PROFILE\0';
}

/** JFIF header of 16 bytes (ITU-T T.871): identifier, version, density; its preview set to 0 × 0. */
function bareJfif(bytes: Uint8Array, start: number): Uint8Array {
  const bare = bytes.slice(start, start + 18);
  bare.set([0, 16], 2);
  bare.set([0, 0], 16);
  return bare;
}

/** Adobe segment of 14 bytes (ITU-T T.872 6.5.3): identifier, version, flags, colour transform. */
function bareAdobe(bytes: Uint8Array, start: number): Uint8Array {
  const bare = bytes.slice(start, start + 16);
  bare.set([0, 14], 2);
  return bare;
}

/** APP1 with a big-endian TIFF block of one directory and one entry: tag 0x0112, SHORT, count 1. */
function orientationSegment(orientation: Orientation): Uint8Array {
  const block = [0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0];
  const content = [0x45, 0x78, 0x69, 0x66, 0, 0, ...block];
  return Uint8Array.from([0xff, 0xe1, 0, content.length + 2, ...content]);
}

function joined(parts: Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
