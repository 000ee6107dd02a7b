import imageCompression from 'browser-image-compression';
import { canvasIsHonest } from './canvas-is-honest.ts';
import { fitSize } from './fit-size.ts';
import { JPEG_QUALITY, THUMB_LONGEST_PX } from './limits.ts';
import { type SizePx, uprightSize, uprightTransform } from './orientation.ts';
import type { Decodable, Encoded, Shrunk } from './shrink.ts';

/**
 * The second way, on the page itself, by the parts of browser-image-compression: its loader, its canvas that stays below
 * what the browser can hold, its encoder. Its one-call form is not used: its worker loads itself from a public server,
 * it loads by `data:` address in one engine family, which our policy forbids, and where the result is larger than the
 * source it lowers the quality unasked.
 */
export async function shrinkOnPage({ blob, orientation }: Decodable, longestSidePx: number): Promise<Shrunk> {
  const address = URL.createObjectURL(blob);
  try {
    if (!canvasIsHonest()) return { ok: false, failed: 'canvas' };
    const image = await imageCompression.loadImage(address);
    const whole = imageCompression.drawImageInCanvas(image, 'image/jpeg');
    // Not the canvas's size: on some phones it is smaller than the picture.
    const stored = { widthPx: image.naturalWidth, heightPx: image.naturalHeight };
    const turn = { orientation, from: whole };
    const picture = await encodeUpright({ ...turn, size: fitSize(stored, longestSidePx) });
    const thumb = await encodeUpright({ ...turn, size: fitSize(stored, THUMB_LONGEST_PX) });
    release(whole);
    return { ok: true, picture, thumb };
  } catch {
    // Image elements and canvases fail without a cause; the caller knows the file and names it.
    return { ok: false, failed: 'decode' };
  } finally {
    URL.revokeObjectURL(address);
  }
}

interface Turn {
  from: HTMLCanvasElement;
  orientation: Decodable['orientation'];
  /** Size to draw at, before turning. */
  size: SizePx;
}

async function encodeUpright({ from, orientation, size }: Turn): Promise<Encoded> {
  const upright = uprightSize(size, orientation);
  const canvas = document.createElement('canvas');
  canvas.width = upright.widthPx;
  canvas.height = upright.heightPx;
  const context = canvas.getContext('2d', { alpha: false });
  if (context === null) throw new Error('encodeUpright: no 2D context');
  context.imageSmoothingQuality = 'high';
  context.setTransform(...uprightTransform(size, orientation));
  context.drawImage(from, 0, 0, size.widthPx, size.heightPx);
  const file = await imageCompression.canvasToFile(canvas, 'image/jpeg', 'photo.jpg', 0, JPEG_QUALITY);
  release(canvas);
  return { bytes: await file.arrayBuffer(), ...upright };
}

function release(canvas: HTMLCanvasElement): void {
  canvas.width = 0;
  canvas.height = 0;
}
