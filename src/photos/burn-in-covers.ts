import { jpegLayout } from '../schema/jpeg-layout.ts';
import { COVERED_JPEG_QUALITY } from './limits.ts';
import type { SizePx } from './orientation.ts';
import { pictureSurface } from './picture-surface.ts';
import { stripMetadata } from './strip-metadata.ts';

/** A box in image coordinates, 0–1 from the left and the top of the upright picture. */
export interface CoverBox {
  x: number;
  y: number;
  width: number;
  height: number;
}

/**
 * A copy of a stored JPEG with the covered parts painted black, so that no export holds what was hidden. Without covers
 * the very same bytes come back. Works on the page and in workers.
 *
 * Throws  Error where the browser cannot decode or draw: leave the picture out then, never show it uncovered.
 * Check   tests/browser/photographs/intake.test.ts, tests/photos/cover-pixels.test.ts
 */
export async function burnInCovers({
  bytes,
  covers,
}: {
  bytes: ArrayBuffer;
  covers: CoverBox[];
}): Promise<ArrayBuffer> {
  if (covers.length === 0) return bytes;
  const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }));
  const size = { widthPx: bitmap.width, heightPx: bitmap.height };
  const surface = pictureSurface(size);
  surface.context.drawImage(bitmap, 0, 0, size.widthPx, size.heightPx);
  bitmap.close();
  surface.context.fillStyle = '#000000';
  for (const cover of covers) surface.context.fillRect(...coverPixels(cover, size));
  const encoded = new Uint8Array(await surface.jpegBytes(COVERED_JPEG_QUALITY));
  surface.release();
  return stripMetadata(encoded, jpegLayout(encoded), { colourProfile: false, orientation: null }).buffer;
}

/** Left, top, width, height in whole pixels, rounded outward and clipped: no pixel that a cover touches stays. */
export function coverPixels(
  { x, y, width, height }: CoverBox,
  { widthPx, heightPx }: SizePx,
): [number, number, number, number] {
  const left = Math.max(0, Math.floor(x * widthPx));
  const top = Math.max(0, Math.floor(y * heightPx));
  const right = Math.min(widthPx, Math.ceil((x + width) * widthPx));
  const bottom = Math.min(heightPx, Math.ceil((y + height) * heightPx));
  return [left, top, Math.max(0, right - left), Math.max(0, bottom - top)];
}
