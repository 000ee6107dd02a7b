import type { Drawing, Palette } from '../../drawing/display-list.ts';
import { paintCanvas } from '../../drawing/paint-canvas.ts';
import { JPEG_QUALITY, THUMB_LONGEST_PX } from '../../photos/limits.ts';
import { sha256Hex } from '../../photos/sha256-hex.ts';
import type { PaintedFacts } from './demo-pack.ts';

export interface PaintedPicture extends PaintedFacts {
  bytes: ArrayBuffer;
  thumbBytes: ArrayBuffer;
}

/** Our choice: as large as a middling phone photo, and a third of its bytes since a drawing is flat. */
const LONGEST_PX = 1600;

/** A drawing as the JPEG bytes of a photo and its thumbnail, each painted at its own size, so that both are crisp. */
export async function paintPicture(drawing: Drawing, palette: Palette): Promise<PaintedPicture> {
  const large = await jpegOf(drawing, palette, LONGEST_PX);
  const thumb = await jpegOf(drawing, palette, THUMB_LONGEST_PX);
  return {
    sha256: await sha256Hex(large.bytes),
    byteCount: large.bytes.byteLength,
    widthPx: large.widthPx,
    heightPx: large.heightPx,
    bytes: large.bytes,
    thumbBytes: thumb.bytes,
  };
}

async function jpegOf(drawing: Drawing, palette: Palette, longestPx: number) {
  const scale = longestPx / Math.max(drawing.width, drawing.height);
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(drawing.width * scale);
  canvas.height = Math.round(drawing.height * scale);
  const surface = canvas.getContext('2d', { alpha: false });
  if (surface === null) throw new Error('paintPicture: no 2D canvas');
  paintCanvas(drawing, surface, { palette, scale, drawPicture: () => {} });
  const { width: widthPx, height: heightPx } = canvas;
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', JPEG_QUALITY));
  canvas.width = 0;
  canvas.height = 0;
  if (blob === null) throw new Error('paintPicture: no JPEG came back');
  return { bytes: await blob.arrayBuffer(), widthPx, heightPx };
}
