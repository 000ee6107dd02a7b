import type { SizePx } from './orientation.ts';

/** A canvas to draw one picture on, white to begin with, and its JPEG bytes. Off-screen where the browser can, else the page's. */
export interface PictureSurface {
  context: SurfaceContext;
  jpegBytes(quality: number): Promise<ArrayBuffer>;
  /** Gives its memory back at once: some engines wait long with it, and a phone has little. */
  release(): void;
}

/** The few calls used, alike in the page's and the worker's canvas. */
export interface SurfaceContext {
  fillStyle: string | object;
  imageSmoothingEnabled: boolean;
  imageSmoothingQuality: 'low' | 'medium' | 'high';
  fillRect(x: number, y: number, width: number, height: number): void;
  setTransform(a: number, b: number, c: number, d: number, e: number, f: number): void;
  drawImage(source: ImageBitmap, x: number, y: number, width: number, height: number): void;
  getImageData(x: number, y: number, width: number, height: number): { data: Uint8ClampedArray };
}

/** Throws Error where no canvas of this size can be had. */
export function pictureSurface(size: SizePx): PictureSurface {
  const surface = typeof OffscreenCanvas === 'undefined' ? pageSurface(size) : offscreenSurface(size);
  surface.context.fillStyle = '#ffffff';
  surface.context.fillRect(0, 0, size.widthPx, size.heightPx);
  surface.context.imageSmoothingQuality = 'high';
  return surface;
}

function offscreenSurface({ widthPx, heightPx }: SizePx): PictureSurface {
  const canvas = new OffscreenCanvas(widthPx, heightPx);
  const context = canvas.getContext('2d', CONTEXT_OPTIONS);
  if (context === null) throw new Error('pictureSurface: no 2D context');
  return {
    context,
    jpegBytes: async (quality) => (await canvas.convertToBlob({ type: 'image/jpeg', quality })).arrayBuffer(),
    release: () => {
      canvas.width = 0;
      canvas.height = 0;
    },
  };
}

/** No alpha, since a JPEG has none; read back often, so kept in main memory rather than on the graphics chip. */
const CONTEXT_OPTIONS = { alpha: false, willReadFrequently: true } as const;

/** What is used of the page's canvas element, spelt out because workers, which share this file, do not know its type. */
interface PageCanvas {
  width: number;
  height: number;
  getContext(kind: '2d', options: typeof CONTEXT_OPTIONS): SurfaceContext | null;
  toBlob(done: (blob: Blob | null) => void, type: string, quality: number): void;
}

function pageSurface({ widthPx, heightPx }: SizePx): PictureSurface {
  const page = (globalThis as { document?: { createElement(name: 'canvas'): PageCanvas } }).document;
  const canvas = page?.createElement('canvas');
  if (canvas === undefined) throw new Error('pictureSurface: no canvas here');
  canvas.width = widthPx;
  canvas.height = heightPx;
  const context = canvas.getContext('2d', CONTEXT_OPTIONS);
  if (context === null) throw new Error('pictureSurface: no 2D context');
  return {
    context,
    jpegBytes: (quality) =>
      new Promise((resolve, reject) => {
        const done = (blob: Blob | null) =>
          blob === null ? reject(new Error('pictureSurface: no JPEG came back')) : resolve(blob.arrayBuffer());
        canvas.toBlob(done, 'image/jpeg', quality);
      }),
    release: () => {
      canvas.width = 0;
      canvas.height = 0;
    },
  };
}
