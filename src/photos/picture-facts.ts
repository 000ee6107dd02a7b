import { type JpegLayout, jpegLayout, MARKER } from '../schema/jpeg-layout.ts';
import { gifFacts, heifFacts, pngFacts, webpFacts } from './container-facts.ts';
import { readExif } from './exif.ts';
import type { Orientation, SizePx } from './orientation.ts';
import { type PictureFormat, textAt } from './sniff-format.ts';

/** What a picture's file says of itself before anything is decoded. */
export interface PictureFacts {
  format: PictureFormat;
  /** False where the file breaks off before its end. */
  complete: boolean;
  /** As stored, before turning; null where the header does not say. */
  sizePx: SizePx | null;
  /** JPEG only: the other decoders turn by themselves. Null where the file does not say. */
  orientation: Orientation | null;
  takenAt: string | null;
  /** JPEG only. */
  layout: JpegLayout | null;
  /** Every browser reads the format, so one that does not decode is broken rather than unknown. */
  everyBrowserReadsIt: boolean;
}

/** Container readers hand over where the Exif block lies; null where there is none. */
export interface ContainerFacts {
  complete: boolean;
  sizePx: SizePx | null;
  exif: Uint8Array | null;
}

export function pictureFacts(bytes: Uint8Array, format: PictureFormat): PictureFacts {
  if (format === 'jpeg') return jpegFacts(bytes);
  const { complete, sizePx, exif } = containerFacts(bytes, format);
  const takenAt = exif === null ? null : readExif(exif).takenAt;
  const everyBrowserReadsIt = format === 'png' || format === 'webp' || format === 'gif';
  return { format, complete, sizePx, orientation: null, takenAt, layout: null, everyBrowserReadsIt };
}

function containerFacts(bytes: Uint8Array, format: Exclude<PictureFormat, 'jpeg'>): ContainerFacts {
  switch (format) {
    case 'png':
      return pngFacts(bytes);
    case 'webp':
      return webpFacts(bytes);
    case 'gif':
      return gifFacts(bytes);
    case 'heic':
    case 'avif':
      return heifFacts(bytes);
  }
}

function jpegFacts(bytes: Uint8Array): PictureFacts {
  const layout = jpegLayout(bytes);
  const { frame, complete } = layout;
  const exif = jpegExifBlock(bytes, layout);
  const { orientation, takenAt } = exif === null ? { orientation: null, takenAt: null } : readExif(exif);
  const sizePx = frame === null ? null : { widthPx: frame.widthPx, heightPx: frame.heightPx };
  // Baseline, extended and progressive Huffman; lossless and arithmetic-coded JPEGs are read by no browser.
  const everyBrowserReadsIt = frame === null || (frame.marker >= MARKER.SOF0 && frame.marker <= MARKER.SOF2);
  return { format: 'jpeg', complete, sizePx, orientation, takenAt, layout, everyBrowserReadsIt };
}

function jpegExifBlock(bytes: Uint8Array, layout: JpegLayout): Uint8Array | null {
  const segment = layout.segments.find(
    ({ marker, start }) => marker === MARKER.APP1 && textAt(bytes, start + 4, 6) === 'Exif\0\0',
  );
  return segment === undefined ? null : bytes.subarray(segment.start + 10, segment.end);
}
