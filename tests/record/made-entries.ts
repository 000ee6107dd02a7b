import type { Entry } from '../../src/schema/entry.ts';

/** Hand-made keys and stamps for tests: nothing here is computed by the code under test. */
export const PACK = 'a'.repeat(32);
export const OTHER_PACK = 'b'.repeat(32);
export const DEVICE = '1'.repeat(32);
export const OTHER_DEVICE = '2'.repeat(32);
export const PHOTO = 'c'.repeat(64);
export const SECOND_PHOTO = 'd'.repeat(64);

/** A stamp at `ms` with counter 0. */
export function stampAt(ms: number, device = DEVICE, counter = 0): string {
  return `${String(ms).padStart(15, '0')}.${String(counter).padStart(6, '0')}.${device}`;
}

export function entry(subject: string, part: string, v: unknown, ms = 1000): Entry {
  return { key: [PACK, subject, part], v, at: stampAt(ms), by: DEVICE };
}

export function tombstone(subject: string, part: string, ms = 2000): Entry {
  return { key: [PACK, subject, part], v: null, at: stampAt(ms), by: DEVICE, gone: true };
}

export function photoValue(made = stampAt(1000)) {
  return { zone: 'cells', widthPx: 2048, heightPx: 1536, byteCount: 600_000, originalSha256: 'e'.repeat(64), made };
}

export function leader(photoId: string, made: string) {
  return { photoId, kind: 'leader', points: [[0.1, 0.2], [0.5, 0.25]], text: 'lifted weld', made }; // biome-ignore format: one line
}
