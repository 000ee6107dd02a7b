import { RefusedBundle } from './refused-bundle.ts';

/**
 * Bytes of a file from `from` to before `to`. Only what is asked for is held.
 *
 * Throws  RefusedBundle where the file cannot be read any more: moved, changed or taken out with its card.
 */
export async function readSlice(file: Blob, from: number, to: number): Promise<Uint8Array<ArrayBuffer>> {
  let bytes: Uint8Array<ArrayBuffer>;
  try {
    bytes = new Uint8Array(await file.slice(from, to).arrayBuffer());
  } catch (error) {
    throw new RefusedBundle('unreadable', String(error));
  }
  if (bytes.byteLength !== to - from) throw new RefusedBundle('unreadable', 'it is shorter than it was');
  return bytes;
}
