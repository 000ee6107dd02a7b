import { zipSync } from 'fflate';
import type { AnnotationPage } from './annotations.ts';

export interface ZippedPhoto {
  fileName: string;
  /** JPEG with its cover-ups burnt in. */
  bytes: ArrayBuffer;
}

interface AnnotatedPhotos {
  page: AnnotationPage;
  photos: readonly ZippedPhoto[];
  /** Time that every file in it bears: the same record gives the same file. */
  atMs: number;
}

/**
 * Earliest and latest time: the format begins in 1980 (PKWARE APPNOTE 6.3.10, section 4.4.6), and the library that
 * writes it ends in 2099. A day is left at either end for the clock's offset.
 */
const EARLIEST_MS = Date.UTC(1980, 0, 2);
const LATEST_MS = Date.UTC(2099, 11, 30);

/** Photos and their annotations as one zip; a JPEG is packed already, so nothing is packed again. */
export function annotatedPhotosZip({ page, photos, atMs }: AnnotatedPhotos): Uint8Array<ArrayBuffer> {
  const files: Record<string, Uint8Array> = {
    'annotations.jsonld': new TextEncoder().encode(`${JSON.stringify(page, null, 2)}\n`),
  };
  for (const { fileName, bytes } of photos) files[`photos/${fileName}`] = new Uint8Array(bytes);
  return zipSync(files, { level: 0, mtime: Math.min(Math.max(atMs, EARLIEST_MS), LATEST_MS) });
}
