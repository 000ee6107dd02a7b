import type { ContainerFacts } from './picture-facts.ts';
import { textAt } from './sniff-format.ts';

/** PNG: chunks from byte 8 on, each length, type, content, checksum (PNG 3rd ed. §5.3); IHDR first, IEND last, eXIf between. */
export function pngFacts(bytes: Uint8Array): ContainerFacts {
  const view = viewOf(bytes);
  const facts: ContainerFacts = { complete: false, sizePx: null, exif: null };
  for (let at = 8; at + 12 <= bytes.length; ) {
    const length = view.getUint32(at);
    const type = textAt(bytes, at + 4, 4);
    if (at + 12 + length > bytes.length) return facts;
    if (type === 'IHDR' && length >= 8) {
      facts.sizePx = { widthPx: view.getUint32(at + 8), heightPx: view.getUint32(at + 12) };
    }
    if (type === 'eXIf') facts.exif = bytes.subarray(at + 8, at + 8 + length);
    if (type === 'IEND') return { ...facts, complete: true };
    at += 12 + length;
  }
  return facts;
}

/** WebP: a RIFF container with its length in bytes 4–7; the first chunk gives the size in one of three ways (RFC 9649 §2). */
export function webpFacts(bytes: Uint8Array): ContainerFacts {
  if (bytes.length < 30) return { complete: false, sizePx: null, exif: null };
  const view = viewOf(bytes);
  const end = view.getUint32(4, true) + 8;
  return { complete: end <= bytes.length, sizePx: webpSize(bytes, view), exif: webpExif(bytes, view) };
}

function webpSize(bytes: Uint8Array, view: DataView): ContainerFacts['sizePx'] {
  const type = textAt(bytes, 12, 4);
  if (type === 'VP8X') {
    const uint24 = (at: number) => view.getUint16(at, true) + ((bytes[at + 2] ?? 0) << 16);
    return { widthPx: uint24(24) + 1, heightPx: uint24(27) + 1 };
  }
  if (type === 'VP8L') {
    const packed = view.getUint32(21, true);
    return { widthPx: (packed & 0x3fff) + 1, heightPx: ((packed >>> 14) & 0x3fff) + 1 };
  }
  if (type === 'VP8 ') {
    return { widthPx: view.getUint16(26, true) & 0x3fff, heightPx: view.getUint16(28, true) & 0x3fff };
  }
  return null;
}

function webpExif(bytes: Uint8Array, view: DataView): Uint8Array | null {
  for (let at = 12; at + 8 <= bytes.length; ) {
    const length = view.getUint32(at + 4, true);
    if (textAt(bytes, at, 4) === 'EXIF') {
      const content = bytes.subarray(at + 8, at + 8 + length);
      // Some writers put the JPEG's prefix before the block.
      return textAt(content, 0, 6) === 'Exif\0\0' ? content.subarray(6) : content;
    }
    at += 8 + length + (length % 2);
  }
  return null;
}

/** GIF: the size of the first screen; its end is not checked, a broken one does not decode. */
export function gifFacts(bytes: Uint8Array): ContainerFacts {
  if (bytes.length < 13) return { complete: false, sizePx: null, exif: null };
  const view = viewOf(bytes);
  return {
    complete: true,
    sizePx: { widthPx: view.getUint16(6, true), heightPx: view.getUint16(8, true) },
    exif: null,
  };
}

/**
 * HEIC and AVIF: the largest `ispe` (image spatial extents, ISO/IEC 23008-12 §6.5.3) near the start is the whole
 * picture, the smaller ones its tiles and preview. The Exif item is found by its prefix and byte-order mark instead of
 * through the item tables: only the time is wanted of it, and the decoder turns the picture.
 */
export function heifFacts(bytes: Uint8Array): ContainerFacts {
  const view = viewOf(bytes);
  let sizePx: ContainerFacts['sizePx'] = null;
  const searchEnd = Math.min(bytes.length, HEIF_HEADER_BYTES) - 16;
  for (let at = bytes.indexOf(0x69); at !== -1 && at <= searchEnd; at = bytes.indexOf(0x69, at + 1)) {
    if (textAt(bytes, at, 4) !== 'ispe') continue;
    const found = { widthPx: view.getUint32(at + 8), heightPx: view.getUint32(at + 12) };
    if (sizePx === null || found.widthPx * found.heightPx > sizePx.widthPx * sizePx.heightPx) sizePx = found;
  }
  return { complete: true, sizePx, exif: exifByPrefix(bytes) };
}

/** Our choice: item tables of camera files stay far below this. */
const HEIF_HEADER_BYTES = 262_144;

function exifByPrefix(bytes: Uint8Array): Uint8Array | null {
  for (let at = bytes.indexOf(0x45); at !== -1; at = bytes.indexOf(0x45, at + 1)) {
    const found = textAt(bytes, at, 10);
    if (found === 'Exif\0\0II*\0' || found === 'Exif\0\0MM\0*') return bytes.subarray(at + 6);
  }
  return null;
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}
