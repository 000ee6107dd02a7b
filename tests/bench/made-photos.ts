import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { baselineJpeg } from '../browser/photographs/baseline-jpeg.ts';
import { cameraJpeg } from '../browser/photographs/camera-jpeg.ts';

/** Photographs of 12 megapixels as a phone's camera writes them, each with a grain of its own; their paths. */
export function writeCameraPhotos(folder: string, count: number): string[] {
  const shot = cameraJpeg({ megapixels: 12, orientation: 1, gps: true, takenAt: '2026-05-03T10:11:12+02:00' });
  return Array.from({ length: count }, (_, place) => write(folder, `camera-${place}`, withCoarserGrain(shot, place)));
}

/** Pictures of 320 × 240 px that differ in brightness, quick to take in where only their number counts; their paths. */
export function writeSmallPhotos(folder: string, count: number): string[] {
  return Array.from({ length: count }, (_, place) => {
    const tile = { luma: new Uint8Array(256).fill(40 + 3 * place), cb: 120, cr: 136 };
    return write(folder, `small-${place}`, baselineJpeg({ columns: 20, rows: 15, tiles: [tile], tileAt: () => 0 }));
  });
}

/** The start of the luminance quantisation table (ITU-T T.81 B.2.4.1): 8 bits, destination 0. */
const LUMA_TABLE = Buffer.from([0xff, 0xdb, 0, 67, 0]);

/** One low-frequency step is larger by `extra`, so that picture and hash differ while size and work stay the same. */
function withCoarserGrain(jpeg: Uint8Array, extra: number): Uint8Array {
  const bytes = Buffer.from(jpeg);
  const table = bytes.indexOf(LUMA_TABLE);
  if (table < 0) throw new Error('withCoarserGrain: the picture has no luminance table');
  const at = table + LUMA_TABLE.length + 2;
  bytes[at] = (bytes[at] ?? 0) + extra;
  return bytes;
}

function write(folder: string, name: string, bytes: Uint8Array): string {
  const path = join(folder, `${name}.jpg`);
  writeFileSync(path, bytes);
  return path;
}
