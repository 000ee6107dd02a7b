import { MAX_LOG_BYTES } from '../../storage/bundle/bundle-limits.ts';

export type FileRefusal = 'empty' | 'tooLarge' | 'spreadsheet' | 'binary';

/** What the head of a workbook, archive or page of print begins with: ZIP, compound file, gzip. */
const PACKED = [
  [0x50, 0x4b, 0x03, 0x04],
  [0xd0, 0xcf, 0x11, 0xe0],
  [0x1f, 0x8b],
];
export const HEAD_BYTES = 65_536;
/** Exports with a few stray control characters exist; text with more than one in ten does not. Our choice. */
const MOST_CONTROL_FRAC = 0.1;
/** In UTF-16 one byte of each pair is zero for nearly all of a log; the other never is. Our choice. */
const UTF16_FRAC = 0.4;

/** Why a file cannot be a log, from its size and its first bytes; null where it may be one. */
export function fileRefusal({ byteCount, head }: { byteCount: number; head: Uint8Array }): FileRefusal | null {
  if (byteCount === 0) return 'empty';
  if (byteCount > MAX_LOG_BYTES) return 'tooLarge';
  if (PACKED.some((mark) => mark.every((byte, at) => head[at] === byte))) return 'spreadsheet';
  return isText(head) ? null : 'binary';
}

function isText(head: Uint8Array): boolean {
  let control = 0;
  const zeros = [0, 0];
  for (const [at, byte] of head.entries()) {
    if (byte === 0) zeros[at % 2] = (zeros[at % 2] ?? 0) + 1;
    else if (byte < 32 && !(byte >= 9 && byte <= 13)) control++;
  }
  const [even = 0, odd = 0] = zeros;
  const wide = (Math.max(even, odd) / head.length >= UTF16_FRAC && Math.min(even, odd) === 0) || hasWideMark(head);
  return control + (wide ? 0 : even + odd) <= MOST_CONTROL_FRAC * head.length;
}

/** The byte order mark of UTF-16. */
function hasWideMark([first, second]: Uint8Array): boolean {
  return (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff);
}
