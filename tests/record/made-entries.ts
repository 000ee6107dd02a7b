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

export const HASH_1 = '1a'.repeat(32);
export const HASH_2 = '2b'.repeat(32);
export const HASH_3 = '3c'.repeat(32);

export function voiceValue(made = stampAt(1000)) {
  const on = { kind: 'item', id: 'cell-vents' };
  return { on, type: 'audio/webm', byteCount: 40_000, durationS: 8.5, made };
}

/** A closing as it is written; of a later revision, `more` says what it takes the place of and why. */
export function closingValue(revision: number, more: { after?: string; reason?: string } = {}) {
  return {
    revision,
    closedAtMs: revision * 10_000,
    appVersion: '0.4.0',
    byteCount: 123_456,
    entriesSha256: 'e'.repeat(64),
    score: { low: 14.5, high: 19.5 },
    verdict: { low: 'workshopFirst', high: 'workshopFirst' },
    settled: false,
    ...more,
  };
}

export function attachmentValue(kind: 'makerReply' | 'correction', to: string, made = stampAt(1000)) {
  return { kind, text: 'The lug is 35 mm².', from: 'Wren Works', on: '2026-12-03', to, made };
}
