/**
 * Pixel size of a JPEG from its frame header; null if the bytes are no JPEG that a PDF can hold as it is.
 *
 * Source  ITU-T T.81 (1992) B.1.1.3, B.2.2: SOI, marker segments, SOF0–SOF2
 * Check   tests/sheet/jpeg-size.test.ts
 */
export function jpegSize(bytes: Uint8Array): { widthPx: number; heightPx: number } | null {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return null;
  let at = 2;
  while (at + 9 <= bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1];
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (marker === undefined || marker === 0xda) return null;
    const length = word(bytes, at + 2);
    if (marker >= 0xc0 && marker <= 0xc2) {
      const [heightPx, widthPx] = [word(bytes, at + 5), word(bytes, at + 7)];
      return widthPx > 0 && heightPx > 0 ? { widthPx, heightPx } : null;
    }
    if (length < 2) return null;
    at += 2 + length;
  }
  return null;
}

function word(bytes: Uint8Array, at: number): number {
  return ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0);
}
