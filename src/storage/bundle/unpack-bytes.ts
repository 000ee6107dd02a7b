import { Inflate } from 'fflate';
import { RefusedBundle } from './refused-bundle.ts';

/** Packed bytes fed at a time: at most 1032 times as many come out (zlib's bound), so 16 MB. */
const STEP_BYTES = 16 * 1024;

export interface PackedFile {
  path: string;
  packed: Uint8Array;
  /** As the zip's list declares it. */
  byteCount: number;
}

/**
 * The bytes of one deflated file. Stops at the declared size, so a
 * file that unpacks to more than its list says cannot fill the memory.
 *
 * Throws  RefusedBundle
 */
export function unpackBytes({ path, packed, byteCount }: PackedFile): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(byteCount);
  let filled = 0;
  let ended = false;
  const inflate = new Inflate((chunk, final) => {
    if (filled + chunk.byteLength > byteCount)
      throw new RefusedBundle('tooLarge', `${path} unpacks to more than it says`);
    bytes.set(chunk, filled);
    filled += chunk.byteLength;
    ended = final;
  });
  try {
    for (let at = 0; at < packed.byteLength || at === 0; at += STEP_BYTES) {
      inflate.push(packed.subarray(at, at + STEP_BYTES), at + STEP_BYTES >= packed.byteLength);
    }
  } catch (error) {
    if (error instanceof RefusedBundle) throw error;
    throw new RefusedBundle('damagedZip', `${path} does not unpack: ${String(error)}`);
  }
  if (!ended || filled !== byteCount)
    throw new RefusedBundle('damagedZip', `${path} unpacks to ${filled} of ${byteCount} bytes`);
  return bytes;
}
