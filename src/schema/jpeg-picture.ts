import { jpegLayout, MARKER } from './jpeg-layout.ts';

export interface PictureLimits {
  /** Longer side. */
  sidePx: number;
  pixels: number;
}

export type JpegPicture =
  | { ok: true; widthPx: number; heightPx: number }
  | { ok: false; problem: 'notJpeg' | 'tooLarge' };

/**
 * Whether bytes are a JPEG picture that a browser may be given, without decoding it: start of image, whole segments, one
 * frame before the first scan whose header has the length it must have, and a size within limits. SVG, HTML, PNG and a
 * JPEG's first bytes before something else are not.
 *
 * Source  ITU-T T.81: B.1.1.3 and table B.1 (markers), B.2.2 (frame header), B.2.3 (scan header)
 * Check   tests/schema/jpeg-picture.test.ts
 */
export function jpegPicture(bytes: Uint8Array, limits: PictureLimits): JpegPicture {
  const notJpeg: JpegPicture = { ok: false, problem: 'notJpeg' };
  if (bytes[0] !== 0xff || bytes[1] !== MARKER.SOI || bytes[2] !== 0xff) return notJpeg;
  const { segments, frame } = jpegLayout(bytes);
  const scanAt = segments.findIndex(({ marker }) => marker === MARKER.SOS);
  const header = segments.slice(0, Math.max(scanAt, 0)).find(({ marker }) => marker === frame?.marker);
  const scan = segments[scanAt];
  if (frame === null || header === undefined || scan === undefined) return notJpeg;
  const componentCount = bytes[header.start + 9] ?? 0;
  // Lf = 8 + 3·Nf; Ls = 6 + 2·Ns with 1 to 4 components in a scan.
  const scanComponentCount = bytes[scan.start + 4] ?? 0;
  const scanHeaderBytes = ((bytes[scan.start + 2] ?? 0) << 8) | (bytes[scan.start + 3] ?? 0);
  if (componentCount < 1 || header.end - header.start !== 2 + 8 + 3 * componentCount) return notJpeg;
  if (scanComponentCount < 1 || scanComponentCount > 4 || scanHeaderBytes !== 6 + 2 * scanComponentCount)
    return notJpeg;
  const { widthPx, heightPx } = frame;
  // A height of 0 would be told later by a DNL segment, which no camera and no browser writes.
  if (widthPx === 0 || heightPx === 0) return notJpeg;
  const fits = Math.max(widthPx, heightPx) <= limits.sidePx && widthPx * heightPx <= limits.pixels;
  return fits ? { ok: true, widthPx, heightPx } : { ok: false, problem: 'tooLarge' };
}
