import { canvasIsHonest } from './canvas-is-honest.ts';
import { fitSize } from './fit-size.ts';
import { JPEG_QUALITY, THUMB_LONGEST_PX } from './limits.ts';
import { type Orientation, uprightSize, uprightTransform } from './orientation.ts';
import { pictureSurface } from './picture-surface.ts';
import type { Decodable, Encoded, Shrunk } from './shrink.ts';

/** The browser's own decoder and scaler (createImageBitmap) and an off-screen canvas; runs in a worker. */
export async function shrinkNatively(picture: Decodable, longestSidePx: number): Promise<Shrunk> {
  try {
    if (!canvasIsHonest()) return { ok: false, failed: 'canvas' };
    const fitted = await decodeFitted(picture, longestSidePx);
    const small = await resized(fitted, THUMB_LONGEST_PX);
    const [full, thumb] = await Promise.all([
      encodeUpright(fitted, picture.orientation),
      encodeUpright(small, picture.orientation),
    ]);
    fitted.close();
    small.close();
    return { ok: true, picture: full, thumb };
  } catch {
    // Decoders and canvases fail with one and the same error for every cause; the caller knows the file and names it.
    return { ok: false, failed: 'decode' };
  }
}

/** Decodes straight to the wanted size where the stored size is known, else decodes whole and then scales. */
async function decodeFitted({ blob, storedSizePx }: Decodable, longestSidePx: number): Promise<ImageBitmap> {
  if (storedSizePx === null) {
    const whole = await createImageBitmap(blob);
    const fitted = await resized(whole, longestSidePx);
    if (fitted !== whole) whole.close();
    return fitted;
  }
  const { widthPx, heightPx } = fitSize(storedSizePx, longestSidePx);
  if (widthPx === storedSizePx.widthPx && heightPx === storedSizePx.heightPx) return createImageBitmap(blob);
  return createImageBitmap(blob, { resizeWidth: widthPx, resizeHeight: heightPx, resizeQuality: 'high' });
}

async function resized(bitmap: ImageBitmap, longestSidePx: number): Promise<ImageBitmap> {
  const { widthPx, heightPx } = fitSize({ widthPx: bitmap.width, heightPx: bitmap.height }, longestSidePx);
  if (widthPx === bitmap.width && heightPx === bitmap.height) return bitmap;
  return createImageBitmap(bitmap, { resizeWidth: widthPx, resizeHeight: heightPx, resizeQuality: 'high' });
}

async function encodeUpright(bitmap: ImageBitmap, orientation: Orientation): Promise<Encoded> {
  const stored = { widthPx: bitmap.width, heightPx: bitmap.height };
  const upright = uprightSize(stored, orientation);
  const surface = pictureSurface(upright);
  surface.context.setTransform(...uprightTransform(stored, orientation));
  surface.context.drawImage(bitmap, 0, 0, stored.widthPx, stored.heightPx);
  const bytes = await surface.jpegBytes(JPEG_QUALITY);
  surface.release();
  return { bytes, ...upright };
}
