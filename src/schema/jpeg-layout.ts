/** Where the parts of a JPEG file lie (ISO/IEC 10918-1 Annex B). Reads markers only, decodes nothing, throws on nothing. */

export interface JpegSegment {
  /** Second byte of the marker, e.g. 0xe1 for APP1. */
  marker: number;
  /** From the marker's 0xff … */
  start: number;
  /** … to the byte after its content; a scan's compressed data belongs to its SOS segment. */
  end: number;
}

export interface JpegLayout {
  /** Every segment between SOI and EOI, in file order. */
  segments: JpegSegment[];
  /** A frame, at least one scan and the end marker were found. Browsers decode a file without them to grey. */
  complete: boolean;
  /** The byte after EOI; what follows (motion video, gain map, second picture) is not part of this picture. */
  end: number;
  frame: { marker: number; widthPx: number; heightPx: number } | null;
}

export const MARKER = { SOF0: 0xc0, SOF2: 0xc2, SOI: 0xd8, EOI: 0xd9, SOS: 0xda, APP0: 0xe0, APP1: 0xe1 } as const;

export function jpegLayout(bytes: Uint8Array): JpegLayout {
  const layout: JpegLayout = { segments: [], complete: false, end: bytes.length, frame: null };
  let scanSeen = false;
  let at = 2;
  for (;;) {
    at = nextMarkerAt(bytes, at);
    const marker = bytes[at + 1];
    if (marker === undefined) return layout;
    if (marker === MARKER.EOI) {
      return { ...layout, complete: scanSeen && layout.frame !== null, end: at + 2 };
    }
    if (isStray(marker)) {
      at += 2;
      continue;
    }
    const end = at + 2 + uint16(bytes, at + 2);
    // A second SOI or a reserved code before EOI, or a length past the end: the picture breaks off here.
    if (marker === MARKER.SOI || marker < 0xc0 || end < at + 4 || end > bytes.length) return layout;
    const segment = { marker, start: at, end: marker === MARKER.SOS ? endOfScan(bytes, end) : end };
    layout.segments.push(segment);
    if (isFrame(marker)) layout.frame ??= { marker, heightPx: uint16(bytes, at + 5), widthPx: uint16(bytes, at + 7) };
    if (marker === MARKER.SOS) scanSeen = true;
    at = segment.end;
  }
}

/** The 0xff right before a marker code; stray bytes and 0xff fill before it are passed over, as decoders do. */
function nextMarkerAt(bytes: Uint8Array, from: number): number {
  let at = bytes.indexOf(0xff, from);
  if (at === -1) return bytes.length;
  while (bytes[at + 1] === 0xff) at++;
  return at;
}

/** Codes without content that may stand between segments: a stuffed zero, TEM, a restart. */
function isStray(marker: number): boolean {
  return marker === 0x00 || marker === 0x01 || isRestart(marker);
}

function isRestart(code: number): boolean {
  return code >= 0xd0 && code <= 0xd7;
}

/** SOF0–SOF15 without DHT (0xc4), JPG (0xc8) and DAC (0xcc). */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
}

/** Compressed data ends at the first 0xff that is followed by neither a stuffed zero nor a restart. */
function endOfScan(bytes: Uint8Array, from: number): number {
  let at = from;
  for (;;) {
    at = nextMarkerAt(bytes, at);
    const code = bytes[at + 1];
    if (code === undefined) return bytes.length;
    if (code !== 0x00 && !isRestart(code)) return at;
    at += 2;
  }
}

function uint16(bytes: Uint8Array, at: number): number {
  return ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0);
}
