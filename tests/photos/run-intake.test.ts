import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import type { IntakeProblem } from '../../src/photos/intake.ts';
import { runIntake } from '../../src/photos/run-intake.ts';
import type { Decodable, Shrink } from '../../src/photos/shrink.ts';
import { heicStub, truncated } from '../browser/photographs/broken-files.ts';
import { cameraJpeg, holdsPosition, jpegSegment } from '../browser/photographs/camera-jpeg.ts';
import { FRAME, jpegOf, SCAN, TABLES } from './hand-built-jpeg.ts';

const SHOT = { megapixels: 12, orientation: 6, gps: true, takenAt: '2024-05-03T10:11:12+02:00' } as const;
/** What an encoder hands back, with an Exif block of its own, as one engine family adds. */
const ENCODED = jpegOf(jpegSegment(0xe1, Buffer.from('Exif\0\0of the encoder')), TABLES, FRAME, SCAN);
const encoded = () => ({ bytes: ENCODED.slice().buffer, widthPx: 1536, heightPx: 2048 });
const shrinks: Shrink = async () => ({
  ok: true,
  picture: encoded(),
  thumb: { ...encoded(), widthPx: 240, heightPx: 320 },
});
const failing =
  (failed: 'decode' | 'canvas'): Shrink =>
  async () => ({ ok: false, failed });
const sha256 = (bytes: Uint8Array | ArrayBuffer) => createHash('sha256').update(new Uint8Array(bytes)).digest('hex');

function run(file: Blob, shrink: Shrink, options = { detail: false, keepOriginal: false }) {
  return runIntake({ file, options, path: 'worker', shrink, onStep: () => {} });
}

it('hands the decoder a JPEG without position and orientation, but with orientation 6 beside it and 2048 px to fit', async () => {
  let seen: { picture: Decodable; longestSidePx: number } | null = null;
  await run(new Blob([cameraJpeg(SHOT)]), async (picture, longestSidePx) => {
    seen = { picture, longestSidePx };
    return { ok: false, failed: 'decode' };
  });
  const { picture, longestSidePx } = seen as unknown as { picture: Decodable; longestSidePx: number };
  expect(longestSidePx).toBe(2048);
  expect(picture).toMatchObject({ orientation: 6, storedSizePx: { widthPx: 4032, heightPx: 3024 } });
  const bytes = new Uint8Array(await picture.blob.arrayBuffer());
  expect(holdsPosition(bytes)).toBe(false);
  expect(Buffer.from(bytes).includes('Exif')).toBe(false);
});

it('stores neither Exif of the camera nor of the encoder, and hashes what it stores', async () => {
  const camera = cameraJpeg(SHOT);
  const { intake } = await run(new Blob([camera]), shrinks, { detail: false, keepOriginal: true });
  if (!intake.ok) throw new Error(intake.problem);
  const { photo } = intake;
  const bare = jpegOf(TABLES, FRAME, SCAN);
  expect(new Uint8Array(photo.bytes)).toEqual(bare);
  expect(new Uint8Array(photo.thumb.bytes)).toEqual(bare);
  expect(photo).toMatchObject({
    sha256: sha256(bare),
    originalSha256: sha256(camera),
    takenAt: SHOT.takenAt,
    path: 'worker',
  });
  expect(photo.original?.sha256).toBe(sha256(photo.original?.bytes ?? new ArrayBuffer(0)));
  expect(holdsPosition(new Uint8Array(photo.original?.bytes ?? camera))).toBe(false);
});

it('asks for 4096 px of a detail photo', async () => {
  let asked = 0;
  await run(
    new Blob([cameraJpeg(SHOT)]),
    async (_, longestSidePx) => {
      asked = longestSidePx;
      return { ok: false, failed: 'decode' };
    },
    { detail: true, keepOriginal: false },
  );
  expect(asked).toBe(4096);
});

const large = new Uint8Array(1000);
large.set([0xff, 0xd8, 0xff]);
const blobOf = (bytes: Uint8Array<ArrayBuffer>, change: Record<string, unknown>) =>
  Object.defineProperties(
    new Blob([bytes]),
    Object.fromEntries(Object.entries(change).map(([name, value]) => [name, { value }])),
  );
const tooMany = (widthPx: number, heightPx: number) =>
  jpegOf(
    TABLES,
    jpegSegment(0xc0, Uint8Array.of(8, heightPx >> 8, heightPx & 255, widthPx >> 8, widthPx & 255, 1, 1, 0x11, 0)),
    SCAN,
  );
const refuseToRead = (error: Error) => ({ arrayBuffer: () => Promise.reject(error) });

it.each<[string, Blob, Shrink, IntakeProblem, boolean]>([
  ['an empty file', new Blob([]), shrinks, 'empty', false],
  ['words', new Blob(['words']), shrinks, 'notAPicture', false],
  ['a truncated JPEG', new Blob([truncated()]), shrinks, 'damaged', false],
  ['a header of 10 001 × 10 000 px', new Blob([tooMany(10_001, 10_000)]), shrinks, 'tooLarge', false],
  ['a file of 300 000 001 bytes', blobOf(large, { size: 300_000_001 }), shrinks, 'tooLarge', false],
  [
    'a file its keeper does not give',
    blobOf(large, refuseToRead(new DOMException('gone', 'NotReadableError'))),
    shrinks,
    'unreadable',
    false,
  ],
  [
    'a file without room for its bytes',
    blobOf(large, refuseToRead(new RangeError('allocation failed'))),
    shrinks,
    'outOfMemory',
    false,
  ],
  ['an HEIC that does not decode', new Blob([heicStub()]), failing('decode'), 'cannotDecode', true],
  [
    'a sound small JPEG that does not decode',
    new Blob([jpegOf(TABLES, FRAME, SCAN)]),
    failing('decode'),
    'damaged',
    true,
  ],
  [
    'a sound JPEG of 25 megapixels that does not decode',
    new Blob([tooMany(5000, 5000)]),
    failing('decode'),
    'outOfMemory',
    false,
  ],
  ['a canvas that does not tell the truth', new Blob([cameraJpeg(SHOT)]), failing('canvas'), 'canvasBlocked', false],
])('%s is named for what it is', async (_, file, shrink, problem, otherPathMayHelp) => {
  expect(await run(file, shrink)).toEqual({ intake: { ok: false, problem }, otherPathMayHelp });
});

it('takes a picture of exactly 100 megapixels', async () => {
  expect((await run(new Blob([tooMany(10_000, 10_000)]), shrinks)).intake.ok).toBe(true);
});

it('keeps no original of another format than JPEG', async () => {
  const { intake } = await run(new Blob([heicStub()]), shrinks, { detail: false, keepOriginal: true });
  expect(intake).toMatchObject({ ok: true, photo: { original: null } });
});
