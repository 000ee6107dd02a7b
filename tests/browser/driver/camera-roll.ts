import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import { type CameraShot, cameraJpeg } from '../photographs/camera-jpeg.ts';

/** `YYYY-MM-DDThh:mm:ss±hh:mm`, as every made photograph says. */
export const TAKEN_AT = '2026-05-03T10:11:12+02:00';

/** A folder of picture files for one test file; taken away after its tests. */
export function cameraRoll() {
  const folder = mkdtempSync(join(tmpdir(), 'underlid-roll-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const put = (name: string, bytes: Uint8Array): string => {
    const path = join(folder, name);
    writeFileSync(path, bytes);
    return path;
  };
  return {
    folder,
    put,
    /** A photograph with a position in every place that can hold one, 12 megapixels unless told otherwise. */
    shot(name: string, change: Partial<CameraShot> = {}): string {
      return put(name, cameraJpeg({ megapixels: 12, orientation: 1, gps: true, takenAt: TAKEN_AT, ...change }));
    },
  };
}
