import type { LogEncoding } from './log-layout.ts';

/**
 * Bytes of a log as text. Bytes that are no UTF-8 become U+FFFD, one each; nothing throws.
 * Written out because the pure folders have no decoder of the page's.
 */
export function logText(bytes: Uint8Array, encoding: LogEncoding): string {
  return encoding === 'utf8' ? utf8Text(bytes) : latin1Text(bytes);
}

/** Whether the bytes are valid UTF-8; a character cut off at the very end still is. */
export function isUtf8(bytes: Uint8Array): boolean {
  for (let at = 0; at < bytes.length; ) {
    const length = sequenceLength(bytes, at);
    if (length === 0 && at + 4 <= bytes.length) return false;
    if (length === 0) return (bytes[at] ?? 0) >= 0xc2;
    at += length;
  }
  return true;
}

/**
 * UTF-16 squeezed into one byte a character, so that one reader serves all: figures, separators and Latin letters stay,
 * the minus sign becomes a hyphen, all else a question mark. Other encodings come back as they are.
 */
export function oneByteText(bytes: Uint8Array, encoding: LogEncoding): Uint8Array {
  if (encoding !== 'utf16le' && encoding !== 'utf16be') return bytes;
  const high = encoding === 'utf16le' ? 1 : 0;
  const squeezed = new Uint8Array(bytes.length >> 1);
  for (let at = 0; at < squeezed.length; at++) {
    const code = ((bytes[2 * at + high] ?? 0) << 8) | (bytes[2 * at + 1 - high] ?? 0);
    squeezed[at] = code < 256 ? code : code === 0x2212 ? 45 : 63;
  }
  return squeezed;
}

function utf8Text(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; ) {
    const length = sequenceLength(bytes, at);
    parts.push(length === 0 ? '\ufffd' : String.fromCodePoint(codePoint(bytes, at, length)));
    at += Math.max(length, 1);
  }
  return parts.join('');
}

/** Windows-1252 differs from Latin-1 only where no log has anything to say. */
function latin1Text(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += 8192) parts.push(String.fromCharCode(...bytes.subarray(at, at + 8192)));
  return parts.join('');
}

function codePoint(bytes: Uint8Array, at: number, length: number): number {
  const first = bytes[at] ?? 0;
  if (length === 1) return first;
  let code = first & (0xff >> (length + 1));
  for (let next = 1; next < length; next++) code = (code << 6) | ((bytes[at + next] ?? 0) & 0x3f);
  return code;
}

/** Length of the UTF-8 sequence that begins here, 0 if there is none. RFC 3629, section 4. */
function sequenceLength(bytes: Uint8Array, at: number): number {
  const first = bytes[at] ?? 0;
  if (first < 0x80) return 1;
  const length =
    first >= 0xc2 && first < 0xe0 ? 2 : first >= 0xe0 && first < 0xf0 ? 3 : first >= 0xf0 && first < 0xf5 ? 4 : 0;
  for (let next = 1; next < length; next++) if (((bytes[at + next] ?? 0) & 0xc0) !== 0x80) return 0;
  const second = bytes[at + 1] ?? 0;
  const overlong = (first === 0xe0 && second < 0xa0) || (first === 0xf0 && second < 0x90);
  const beyond = (first === 0xed && second > 0x9f) || (first === 0xf4 && second > 0x8f);
  return overlong || beyond ? 0 : length;
}
